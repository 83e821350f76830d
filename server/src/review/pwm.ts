import { diodeAt } from '../physics/diode-model.ts'
import { fitDiode } from '../physics/fit-diode.ts'
import { assumedNoct, cellTemperature, installedNoctRise, rossCoefficient } from '../physics/mounting.ts'
import { currentAt, maxPower } from '../physics/single-diode.ts'
import { relative } from '../values/inputs.ts'
import { mountingOf } from '../values/site.ts'
import { siteAt } from './panel-at.ts'
import type { ResolvedPanels, ResolvedSystem } from './resolved.ts'

export interface PwmPower {
  /** At the best point, and clamped to the battery [W] for one panel. */
  readonly best: number
  readonly clamped: number
}

/** Drop between panel and battery in a controller that only switches [V]. Common practice, no source. */
const switchDrop = 0.5

/**
 * What one panel gives when a controller joins it to the battery instead of seeking its best point: in 800 W/m2 and air of
 * 20 °C, warm as mounted.
 *
 * @param voltage  battery voltage that falls to one panel [V]
 * @returns        null where no diode fits the sheet
 */
export function pwmPower(system: ResolvedSystem, panels: ResolvedPanels, voltage: number): PwmPower | null {
  const panel = panels.panel?.record
  const { pmax, vmp, imp, voc, isc } = panel?.stc ?? {}
  const { temperature_coefficients: c } = panel ?? {}
  const [beta, gamma] = [relative(c?.voc, voc), relative(c?.pmax, pmax)]
  if (!panel || !pmax || !vmp || !imp || !voc || !isc || beta === undefined || gamma === undefined) return null
  const ratings = { pmax: pmax.value, vmp: vmp.value, imp: imp.value, voc: voc.value, isc: isc.value, beta, gamma }
  const fit = fitDiode({
    ...ratings,
    alpha: relative(c?.isc, isc) ?? 0.0005,
    cells: panel.cells.in_series?.value ?? null,
  })
  if (!fit.ok) return null
  const rise = installedNoctRise[mountingOf(panel, siteAt(system, panels))]
  const cell = cellTemperature(20, 800, rossCoefficient(panel.noct.temperature?.value ?? assumedNoct, rise))
  const diode = diodeAt(fit.params, 800, cell)
  return { best: maxPower(diode).p, clamped: Math.max(0, voltage * currentAt(diode, voltage + switchDrop)) }
}
