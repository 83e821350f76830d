import type { Climate, Panel, Settings } from '../records/records.generated.ts'

export type Mounting = 'bonded' | 'canvas' | 'standoff' | 'open rack'

/** What is assumed about the place a panel is used at. A system or `wattproof.yaml` may say otherwise. */
export interface Site {
  /** Air of a hot day [°C] */
  readonly hottest: number
  /** Air of the coldest morning [°C] */
  readonly coldest: number
  /** absent: by the panel's construction */
  readonly mounting?: Mounting
  /** Sun and temperature by month; without it the energy of a year is not known. */
  readonly climate?: Climate
}

/** The design's assumptions where nobody says otherwise: 35 °C and -10 °C (common practice, no source). */
const defaults = { hottest: 35, coldest: -10 }

/** The site that the settings of a library describe. */
export function siteOf(settings: Settings | undefined, climate?: Climate): Site {
  const { hottest, coldest, mounting } = settings?.site ?? {}
  return {
    hottest: hottest?.value ?? defaults.hottest,
    coldest: coldest?.value ?? defaults.coldest,
    ...(mounting && { mounting: mounting.value }),
    ...(climate && { climate }),
  }
}

/** Flexible panels are glued down, others stand in the air, unless the site says otherwise. */
export const mountingOf = (panel: Panel, site: Site): Mounting =>
  site.mounting ?? (panel.construction?.value === 'flexible' ? 'bonded' : 'open rack')
