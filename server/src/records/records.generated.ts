// Generated from schemas/ by `npm run generate`; do not edit.
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
    readonly technology?: Field<'mono' | 'perc' | 'topcon' | 'hjt' | 'back-contact' | 'poly' | 'cigs' | 'cdte' | 'a-si' | 'thin-film' | 'perovskite' | 'tandem' | 'other'>
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
}

/** The record of each kind. */
export interface RecordTypes {
  readonly panel: Panel
  readonly controller: unknown
  readonly battery: unknown
  readonly climate: unknown
  readonly system: unknown
  readonly library: Settings
}
