import { diodeAt } from '../../physics/diode-model.ts'
import { curve, maxPower } from '../../physics/single-diode.ts'
import type { Panel } from '../../records/records.generated.ts'
import { cellTemperatureHot } from '../cell-temperature-hot.ts'
import { derive } from '../derived.ts'
import { panelPower } from '../panel-power.ts'
import type { Site } from '../site.ts'
import { inCatalogue } from '../../wording/phrase.ts'

/** Current and power against voltage in one light, by the single-diode model of the sheet. */
export interface Curve {
  readonly id: 'stc' | 'noct' | 'hot' | 'weak'
  readonly label: string
  readonly irradiance_w_m2: number
  readonly cell_temperature_c: number
  readonly points: readonly CurvePoint[]
  /** Where the power is highest. */
  readonly best: CurvePoint
}

export interface CurvePoint {
  readonly v: number
  readonly i: number
  readonly p: number
}

/** Of an overcast sky or a low sun; sheets that print weak light print this (IEC 61853-1, from memory). */
const weakLight = 200
const noctLight = 800
const points = 60

/** None where no diode fits the sheet. */
export function curvesOf(panel: Panel, site: Site): readonly Curve[] {
  const diode = panelPower(panel)?.diode
  if (!diode) return []
  const hot = derive(cellTemperatureHot, panel, site).value
  const noct = panel.noct.temperature?.value
  const inLight = (id: Curve['id'], label: string, irradiance: number, temperature: number): Curve => {
    const at = diodeAt(diode, irradiance, temperature)
    return {
      id,
      label,
      irradiance_w_m2: irradiance,
      cell_temperature_c: temperature,
      points: curve(at, points),
      best: maxPower(at),
    }
  }
  return [
    inLight('stc', inCatalogue`standard test`, 1000, 25),
    ...(hot === null ? [] : [inLight('hot', inCatalogue`hot day`, 1000, hot)]),
    ...(noct === undefined ? [] : [inLight('noct', inCatalogue`NOCT`, noctLight, noct)]),
    inLight('weak', inCatalogue`weak light`, weakLight, 25),
  ]
}
