import type { Panel } from '../records/records.generated.ts'
import { atTemperature, estimateCoefficients, usualAlpha } from '../physics/coefficients.ts'
import { coldVoltageFactor } from '../physics/cold-voltage.ts'
import { cellTemperatureHot } from '../values/cell-temperature-hot.ts'
import { deriveNumber } from '../values/derived.ts'
import { relative } from '../values/inputs.ts'
import { pmaxHot } from '../values/pmax-hot.ts'
import type { Site } from '../values/site.ts'
import { isCrystalline } from '../values/technology.ts'
import type { ResolvedPanels, ResolvedSystem } from './resolved.ts'

/** The site as one surface of a system sees it. */
export function siteAt(system: ResolvedSystem, panels: ResolvedPanels): Site {
  const mounting = panels.surface?.mounting?.value
  return { hottest: system.hottest.value, coldest: system.coldest.value, ...(mounting && { mounting }) }
}

/**
 * Open-circuit voltage of one panel with its cells as cold as the air [V]. Where the sheet gives no coefficient, crystalline
 * panels are taken by the table of US practice.
 */
export function vocAt(panel: Panel, air: number): { readonly value: number; readonly byTable: boolean } | null {
  const { voc } = panel.stc
  if (!voc) return null
  const beta = relative(panel.temperature_coefficients.voc, voc)
  if (beta !== undefined) return { value: atTemperature(voc.value, beta, air), byTable: false }
  return isCrystalline(panel) ? { value: voc.value * coldVoltageFactor(air), byTable: true } : null
}

/** Voltage at maximum power of one panel on a hot day [V]; null where its sheet says too little. */
export function vmpHot(panel: Panel, site: Site): number | null {
  const { vmp, voc } = panel.stc
  const hot = deriveNumber(cellTemperatureHot, panel, site)
  const beta = betaVmp(panel)
  return vmp && voc && hot !== null && beta !== null ? atTemperature(vmp.value, beta, hot) : null
}

/** Open-circuit voltage of one panel on a hot day [V]; null without a coefficient, as the table is for cold days. */
export function vocHot(panel: Panel, site: Site): number | null {
  const { voc } = panel.stc
  const hot = deriveNumber(cellTemperatureHot, panel, site)
  const beta = relative(panel.temperature_coefficients.voc, voc)
  return voc && hot !== null && beta !== undefined ? atTemperature(voc.value, beta, hot) : null
}

export const powerHot = (panel: Panel, site: Site): number | null => deriveNumber(pmaxHot, panel, site)

/** Relative coefficient of Vmp [1/K]: as typed, else that of Pmax less that of Imp, else estimated from Voc's. */
function betaVmp(panel: Panel): number | null {
  const { vmp, voc, imp, isc, pmax } = panel.stc
  const { temperature_coefficients: c } = panel
  const typed = relative(c.vmp, vmp)
  if (typed !== undefined) return typed
  if (!vmp || !voc) return null
  const beta = relative(c.voc, voc)
  const alpha = relative(c.isc, isc) ?? usualAlpha
  const estimate = beta === undefined ? undefined : estimateCoefficients(voc.value, vmp.value, alpha, beta)
  const gamma = relative(c.pmax, pmax)
  if (gamma !== undefined) return gamma - (relative(c.imp, imp) ?? estimate?.alphaImp ?? 0)
  return estimate?.betaVmp ?? null
}
