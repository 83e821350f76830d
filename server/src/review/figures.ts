import type { CableFigures } from './cable-figures.ts'
import type { MeasurementFigures } from './measured/measurement-figures.ts'

/** What a review says of one array; null where something is missing. */
export interface ArrayFigures {
  readonly id: string
  readonly pmax_stc_w: number | null
  readonly pmax_hot_w: number | null
  /** Open-circuit voltage of the longest string on the coldest morning. */
  readonly voc_cold_v: number | null
  /** Voltage at maximum power of a string on a hot day. */
  readonly vmp_hot_v: number | null
  /** 1.25 times the short-circuit current of all strings. */
  readonly isc_design_a: number | null
  readonly weight_kg: number | null
  readonly price: Price | null
  readonly cable: CableFigures | null
}

export interface Price {
  readonly amount: number
  /** ISO 4217 code */
  readonly currency: string
}

export interface BatteryFigures {
  readonly usable_wh: number | null
  readonly autonomy_days: number | null
  /** Charge current of all sources over the capacity [1/h]. */
  readonly charge_rate_c: number | null
}

export interface MonthFigures {
  /** 1 to 12 */
  readonly month: number
  readonly sun_kwh_m2_day: number
  readonly yield_wh_day: number
  readonly load_wh_day: number
  /** Share of the capacity, 0 to 1. */
  readonly lowest_soc: number | null
  readonly unserved_wh_day: number | null
}

/** Of a usual year, and of one of which nine in ten are no worse; null without a climate or a battery. */
export interface YearFigures {
  readonly unserved_wh: number | null
  readonly unserved_p90_wh: number | null
}

/** The figures of a system. The command line prints them as they are, with findings beside them. */
export interface Figures {
  readonly arrays: readonly ArrayFigures[]
  readonly battery: BatteryFigures
  readonly months: readonly MonthFigures[]
  readonly year: YearFigures
  /** Every string that was measured, in the order of the file. */
  readonly measurements: readonly MeasurementFigures[]
  /** Sentences. What stands here was not looked at, which is not the same as being in order. */
  readonly not_checked: readonly string[]
}
