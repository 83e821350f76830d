// Generated from schemas/source/ by `npm run generate`; do not edit.
import type { Field, Measure } from './field.ts'

/** Another record, by its id or with its fields in place. */
export interface Reference<T> {
  readonly id?: Field<string>
  readonly inline?: T
}

/** Panel record: One panel's datasheet, typed as printed. Groups and lists are always there, if empty. */
export interface Panel {
  readonly format?: Field
  readonly name?: Field<string>
  readonly maker?: Field<string>
  readonly family?: Field<string>
  readonly construction?: Field<'flexible' | 'rigid' | 'folding'>
  readonly cells: {
    readonly technology?: Field<'mono' | 'perc' | 'topcon' | 'hjt' | 'back-contact' | 'poly' | 'cigs' | 'cdte' | 'a-si' | 'gaas' | 'thin-film' | 'perovskite' | 'tandem' | 'other'>
    readonly in_series?: Field
    readonly parallel_strings?: Field
    readonly bypass_diodes?: Field
  }
  readonly bifacial?: Field<boolean>
  readonly surface?: Field<'ETFE' | 'PET' | 'glass' | 'other'>
  readonly stc: {
    readonly pmax?: Measure
    readonly tolerance?: Measure
    readonly vmp?: Measure
    readonly imp?: Measure
    readonly voc?: Measure
    readonly isc?: Measure
    readonly efficiency?: Measure
  }
  readonly temperature_coefficients: {
    readonly pmax?: Measure
    readonly voc?: Measure
    readonly isc?: Measure
    readonly vmp?: Measure
    readonly imp?: Measure
  }
  readonly noct: {
    readonly temperature?: Measure
    readonly pmax?: Measure
    readonly vmp?: Measure
    readonly imp?: Measure
    readonly voc?: Measure
    readonly isc?: Measure
  }
  readonly size: {
    readonly length?: Measure
    readonly width?: Measure
    readonly thickness?: Measure
  }
  readonly weight?: Measure
  readonly mounting_frame: {
    readonly weight?: Measure
  }
  readonly limits: {
    readonly system_voltage?: Measure
    readonly series_fuse?: Measure
    readonly bend?: Measure
    readonly bend_radius?: Measure
    readonly operating_temperature?: Measure
  }
  readonly price: {
    readonly amount?: Measure
    readonly quoted_on?: Field<string>
    readonly from?: Field<string>
  }
  readonly warranty: {
    readonly output: readonly {
      readonly years?: Field
      readonly at_least?: Measure
    }[]
    readonly workmanship: {
      readonly years?: Field
    }
    readonly exclusions: readonly Field<string>[]
  }
  readonly certificates: readonly Field<string>[]
  readonly datasheet: {
    readonly source?: Field<string>
    readonly page?: Field
    readonly model?: Field<string>
    readonly sha256?: Field<string>
    readonly revision?: Field<string>
    readonly typed_by?: Field<string>
    readonly typed_on?: Field<string>
  }
  readonly notes?: Field<string>
  readonly accepted: readonly {
    readonly rule?: Field<string>
    readonly field?: Field<string>
    readonly because?: Field<string>
  }[]
}

/** Controller record: One charge controller's datasheet, typed as printed. Groups and lists are always there, if empty. */
export interface Controller {
  readonly format?: Field
  readonly name?: Field<string>
  readonly maker?: Field<string>
  readonly type?: Field<'mppt' | 'pwm'>
  readonly input: {
    readonly max_voltage?: Measure
    readonly max_short_circuit_current?: Measure
    readonly max_power?: Measure
    readonly above_battery?: Measure
  }
  readonly output: {
    readonly max_current?: Measure
    readonly battery_voltages: readonly Measure[]
  }
  readonly efficiency?: Measure
  readonly self_consumption?: Measure
  readonly size: {
    readonly length?: Measure
    readonly width?: Measure
    readonly depth?: Measure
  }
  readonly weight?: Measure
  readonly price: {
    readonly amount?: Measure
    readonly quoted_on?: Field<string>
    readonly from?: Field<string>
  }
  readonly datasheet: {
    readonly source?: Field<string>
    readonly page?: Field
    readonly revision?: Field<string>
    readonly typed_by?: Field<string>
    readonly typed_on?: Field<string>
  }
  readonly notes?: Field<string>
  readonly accepted: readonly {
    readonly rule?: Field<string>
    readonly field?: Field<string>
    readonly because?: Field<string>
  }[]
}

/** Battery record: One battery's datasheet, typed as printed. Groups and lists are always there, if empty. */
export interface Battery {
  readonly format?: Field
  readonly name?: Field<string>
  readonly maker?: Field<string>
  readonly chemistry?: Field<'flooded' | 'agm' | 'gel' | 'lifepo4' | 'nmc'>
  readonly nominal_voltage?: Measure
  readonly cells_in_series?: Field
  readonly capacity: {
    readonly amount?: Measure
    readonly over?: Measure
  }
  readonly energy?: Measure
  readonly usable_depth?: Measure
  readonly charge: {
    readonly max_current?: Measure
    readonly voltage?: Measure
    readonly float?: Measure
    readonly equalise?: Measure
    readonly temperature_compensation?: Measure
    readonly lowest_temperature?: Measure
    readonly highest_temperature?: Measure
    readonly low_temperature_cutoff?: Field<boolean>
  }
  readonly discharge: {
    readonly max_current?: Measure
    readonly lowest_temperature?: Measure
  }
  readonly round_trip_efficiency?: Measure
  readonly cycles?: Field
  readonly weight?: Measure
  readonly price: {
    readonly amount?: Measure
    readonly quoted_on?: Field<string>
    readonly from?: Field<string>
  }
  readonly datasheet: {
    readonly source?: Field<string>
    readonly page?: Field
    readonly revision?: Field<string>
    readonly typed_by?: Field<string>
    readonly typed_on?: Field<string>
  }
  readonly notes?: Field<string>
  readonly accepted: readonly {
    readonly rule?: Field<string>
    readonly field?: Field<string>
    readonly because?: Field<string>
  }[]
}

/** Climate record: Sun and temperature of one place, month by month. Groups and lists are always there, if empty. */
export interface Climate {
  readonly format?: Field
  readonly name?: Field<string>
  readonly latitude?: Measure
  readonly longitude?: Measure
  readonly sun: readonly Measure[]
  readonly air: {
    readonly mean_high: readonly Measure[]
    readonly mean_low: readonly Measure[]
    readonly coldest?: Measure
    readonly hottest?: Measure
  }
  readonly ground_reflection?: Measure
  readonly hourly?: Field<string>
  readonly source?: Field<string>
  readonly notes?: Field<string>
  readonly accepted: readonly {
    readonly rule?: Field<string>
    readonly field?: Field<string>
    readonly because?: Field<string>
  }[]
}

/** System description: One customer's system: where the panels lie, how they are wired, what the battery and the loads are. Groups and lists are always there, if empty. */
export interface System {
  readonly format?: Field
  readonly name?: Field<string>
  readonly kind?: Field<'boat' | 'vehicle' | 'cabin'>
  readonly site: {
    readonly climate: Reference<Climate>
    readonly latitude?: Measure
    readonly coldest?: Measure
    readonly hottest?: Measure
    readonly swings?: Field<boolean>
  }
  readonly surfaces: readonly {
    readonly id?: Field<string>
    readonly size: {
      readonly length?: Measure
      readonly width?: Measure
    }
    readonly keep_out: readonly {
      readonly name?: Field<string>
      readonly x?: Measure
      readonly y?: Measure
      readonly length?: Measure
      readonly width?: Measure
    }[]
    readonly gap?: Measure
    readonly walkway: {
      readonly side?: Field<'length' | 'width'>
      readonly width?: Measure
    }
    readonly mounting?: Field<'bonded' | 'canvas' | 'standoff' | 'open rack'>
    readonly tilt?: Measure
    readonly azimuth?: Measure
    readonly curvature?: Measure
    readonly shading?: Measure
    readonly walked_on?: Field<boolean>
  }[]
  readonly arrays: readonly {
    readonly id?: Field<string>
    readonly panels: readonly {
      readonly panel: Reference<Panel>
      readonly count?: Field
      readonly surface?: Field<string>
    }[]
    readonly wiring: {
      readonly in_series?: Field
      readonly in_parallel?: Field
    }
    readonly string_fuse?: Measure
    readonly controller: Reference<Controller>
    readonly shares_controller_with?: Field<string>
    readonly cable: {
      readonly size?: Measure
      readonly length?: Measure
      readonly insulation?: Measure
      readonly ambient?: Measure
      readonly bundled?: Field
    }
    readonly disconnect: {
      readonly current?: Measure
      readonly voltage?: Measure
    }
    readonly output: {
      readonly fuse?: Measure
      readonly cable: {
        readonly size?: Measure
        readonly length?: Measure
        readonly insulation?: Measure
        readonly ambient?: Measure
        readonly bundled?: Field
      }
    }
    readonly installed?: Field<string>
  }[]
  readonly battery: {
    readonly battery: Reference<Battery>
    readonly in_series?: Field
    readonly in_parallel?: Field
    readonly autonomy?: Measure
    readonly place?: Field<'inside' | 'outside'>
    readonly kept_above?: Measure
    readonly fuse?: Measure
    readonly each_fuse?: Measure
    readonly interrupting_rating?: Measure
    readonly low_temperature_cutoff?: Field<boolean>
    readonly charge_protection?: Field<'cutoff' | 'heated'>
    readonly cable: {
      readonly size?: Measure
      readonly length?: Measure
      readonly insulation?: Measure
      readonly ambient?: Measure
      readonly bundled?: Field
    }
  }
  readonly inverter: {
    readonly efficiency?: Measure
    readonly standby?: Measure
    readonly hours?: Measure
    readonly power?: Measure
    readonly surge?: Measure
  }
  readonly loads: readonly {
    readonly name?: Field<string>
    readonly power?: Measure
    readonly current?: Measure
    readonly hours?: Measure
    readonly energy?: Measure
    readonly charge?: Measure
    readonly surge?: Measure
    readonly at?: Field<string>
    readonly supply?: Field<'dc' | 'ac'>
    readonly months: readonly Field[]
    readonly days_a_week?: Field
    readonly one_of?: Field<string>
    readonly own_breaker?: Field<boolean>
  }[]
  readonly other_sources: readonly {
    readonly name?: Field<string>
    readonly kind?: Field<'alternator' | 'dc-dc' | 'shore' | 'generator' | 'wind' | 'hydro' | 'other'>
    readonly power?: Measure
    readonly current?: Measure
    readonly hours?: Measure
    readonly months: readonly Field[]
    readonly days_a_week?: Field
  }[]
  readonly measurements: readonly {
    readonly date?: Field<string>
    readonly array?: Field<string>
    readonly irradiance?: Measure
    readonly reference: {
      readonly panel: Reference<Panel>
      readonly isc?: Measure
    }
    readonly cell_temperature?: Measure
    readonly air?: Measure
    readonly strings: readonly {
      readonly string?: Field
      readonly voc?: Measure
      readonly isc?: Measure
      readonly vmp?: Measure
      readonly imp?: Measure
      readonly notes?: Field<string>
    }[]
    readonly notes?: Field<string>
  }[]
  readonly limits: {
    readonly weight?: Measure
    readonly budget?: Measure
  }
  readonly notes?: Field<string>
  readonly accepted: readonly {
    readonly rule?: Field<string>
    readonly field?: Field<string>
    readonly because?: Field<string>
  }[]
}

/** Settings of a library: wattproof.yaml: settings for all records of this folder and below. Groups and lists are always there, if empty. */
export interface Settings {
  readonly format?: Field
  readonly name?: Field<string>
  readonly site: {
    readonly hottest?: Measure
    readonly coldest?: Measure
    readonly mounting?: Field<'bonded' | 'canvas' | 'standoff' | 'open rack'>
    readonly climate?: Field<string>
  }
  readonly currency?: Field<string>
  readonly practice?: Field<'IEC' | 'NEC'>
  readonly columns: Readonly<Record<string, Field<string>>>
  readonly severities: Readonly<Record<string, Field<'error' | 'warning' | 'information' | 'hint' | 'off'>>>
  readonly price_bands: {
    readonly flexible: {
      readonly low?: Measure
      readonly high?: Measure
    }
    readonly rigid: {
      readonly low?: Measure
      readonly high?: Measure
    }
    readonly folding: {
      readonly low?: Measure
      readonly high?: Measure
    }
  }
  readonly expected_life: {
    readonly flexible?: Measure
    readonly rigid?: Measure
    readonly folding?: Measure
  }
  readonly measurements: {
    readonly limit?: Measure
    readonly voltage?: Measure
    readonly current?: Measure
    readonly irradiance?: Measure
  }
}

/** The record of each kind. */
export interface RecordTypes {
  readonly panel: Panel
  readonly controller: Controller
  readonly battery: Battery
  readonly climate: Climate
  readonly system: System
  readonly library: Settings
}
