import type { WeatherYear } from '../physics/weather-sky.ts'
import type { Battery, Climate, Controller, Panel, Settings, System } from '../records/records.generated.ts'

/** A record that a system uses, and where it stands: `path` is null for one that is written in the system itself. */
export interface Used<T> {
  readonly record: T
  readonly path: string | null
}

export type ArrayEntry = System['arrays'][number]
export type PanelEntry = ArrayEntry['panels'][number]
export type Surface = System['surfaces'][number]
export type Cable = ArrayEntry['cable']
export type MeasurementEntry = System['measurements'][number]

/** Panels of one kind in an array. What could not be found is absent. */
export interface ResolvedPanels {
  readonly entry: PanelEntry
  readonly panel?: Used<Panel>
  readonly surface?: Surface
}

export interface ResolvedArray {
  readonly entry: ArrayEntry
  readonly panels: readonly ResolvedPanels[]
  readonly controller?: Used<Controller>
  /** Whether it is joined to the controller of another array, which counts it. */
  readonly shares?: true
}

/** What was measured on one array at one time. What could not be found is absent. */
export interface ResolvedMeasurement {
  readonly entry: MeasurementEntry
  readonly array?: ResolvedArray
  readonly reference?: Used<Panel>
}

/** A temperature of the site, and whose word it is. */
export interface SiteTemperature {
  /** [°C] */
  readonly value: number
  readonly from: 'system' | 'climate' | 'settings' | 'assumed'
}

/** A system with all that it refers to: what a review works on. */
export interface ResolvedSystem {
  readonly id: string
  readonly system: System
  readonly arrays: readonly ResolvedArray[]
  readonly measurements: readonly ResolvedMeasurement[]
  /** How measured values are evaluated, where the settings say it. */
  readonly measuring?: Settings['measurements']
  readonly battery?: Used<Battery>
  readonly climate?: Used<Climate>
  /** Whose rule for string fuses the person follows; both where absent. */
  readonly practice?: 'IEC' | 'NEC'
  /** The hours of the climate's own file. */
  readonly weather?: WeatherYear
  /** How many years are made from the monthly means. */
  readonly years: number
  readonly coldest: SiteTemperature
  readonly hottest: SiteTemperature
}
