import type { Panel } from '../records/records.generated.ts'
import { area } from './area.ts'
import { cellTemperatureHot } from './cell-temperature-hot.ts'
import { derive } from './derived.ts'
import { efficiency } from './efficiency.ts'
import { energyOfMonths, energyPerYear } from './energy.ts'
import { fillFactor } from './fill-factor.ts'
import { iscDesign } from './isc-design.ts'
import { pmaxHot } from './pmax-hot.ts'
import { powerPerArea } from './power-per-area.ts'
import { powerPerWeight } from './power-per-weight.ts'
import { pricePerKwh } from './price-per-kwh.ts'
import { pricePerWatt } from './price-per-watt.ts'
import type { Site } from './site.ts'
import type { Value } from './value.ts'
import { vocCold } from './voc-cold.ts'
import { vocPerCell } from './voc-per-cell.ts'
import { weightPerArea } from './weight-per-area.ts'

/** The derived values of a panel, in the order in which they are listed. */
export const panelDefinitions = [
  area,
  efficiency,
  fillFactor,
  powerPerArea,
  powerPerWeight,
  weightPerArea,
  pricePerWatt,
  cellTemperatureHot,
  pmaxHot,
  vocCold,
  iscDesign,
  vocPerCell,
  pricePerKwh,
  energyPerYear,
] as const

/** Works out all derived values of a panel at a site. */
export function panelValues(panel: Panel, site: Site): readonly Value[] {
  const definitions = site.climate ? [...panelDefinitions, ...energyOfMonths] : panelDefinitions
  return definitions.map((definition) => derive(definition, panel, site))
}
