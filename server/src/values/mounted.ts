import { assumedNoct, cellTemperature, installedNoctRise, rossCoefficient } from '../physics/mounting.ts'
import type { Panel } from '../records/records.generated.ts'
import { mountingOf, type Site } from './site.ts'

/** What is assumed of every face and ground that no record describes. */
export const assumed = {
  /** Reflection of the face [1]: glass and smooth film reflect alike; what a textured film does has not been published. */
  reflection: 0.16,
  /** Reflectance of the ground [1]. */
  albedo: 0.2,
} as const

/** Ross coefficient of a panel as it is mounted [K m2/W], with the usual NOCT where its sheet gives none. */
export const rossOf = (panel: Panel, site: Site): number =>
  rossCoefficient(panel.noct.temperature?.value ?? assumedNoct, installedNoctRise[mountingOf(panel, site)])

/** Cell temperature in 1000 W/m2 [°C]. @param rise  how much warmer than in the open it runs at NOCT conditions [K] */
export const cellTemperatureInSun = (air: number, noct: number, rise: number): number =>
  cellTemperature(air, 1000, rossCoefficient(noct, rise))
