import type { Controller, Panel } from '../../records/records.generated.ts'
import type { Price } from '../figures.ts'
import type { LaidPanel } from '../packing/pack-panels.ts'
import type { Used } from '../resolved.ts'

/** A record of the library with its id. */
export interface Candidate {
  readonly id: string
  readonly panel: Used<Panel>
}

export interface ControllerChoice {
  readonly id: string
  readonly controller: Used<Controller>
}

export interface Strings {
  readonly in_series: number
  readonly in_parallel: number
  /** Id of the controller that takes them. */
  readonly controller: string
}

/**
 * One panel on one surface. `count` and `layout` are what fits; the figures are of the panels that `strings` wires and the customer's
 * limits allow. Null is not known.
 */
export interface SurfaceRow {
  readonly panel: string
  readonly count: number
  /** Whether it is certain that no more fit. */
  readonly proven: boolean
  readonly layout: readonly LaidPanel[]
  readonly pmax_stc_w: number | null
  readonly pmax_hot_w: number | null
  /** With frames. */
  readonly weight_kg: number | null
  readonly price: Price | null
  /** Twelve numbers, January first: the yield that a review has for a system with these panels alone. */
  readonly wh_day: readonly number[] | null
  readonly kwh_year: number | null
  readonly price_per_kwh: Price | null
  readonly warranty_years: number | null
  /** Why the warranty is void here. */
  readonly warranty_void: string | null
  readonly strings: Strings | null
  readonly front: boolean
  /** Why the panel cannot be taken here. */
  readonly excluded: string | null
  readonly not_known: readonly string[]
}

/** A row of a panel of which nothing is known but that it does not lie there. */
export const unknownRow: Omit<SurfaceRow, 'panel'> = {
  count: 0,
  proven: true,
  layout: [],
  pmax_stc_w: null,
  pmax_hot_w: null,
  weight_kg: null,
  price: null,
  wh_day: null,
  kwh_year: null,
  price_per_kwh: null,
  warranty_years: null,
  warranty_void: null,
  strings: null,
  front: false,
  excluded: null,
  not_known: [],
}
