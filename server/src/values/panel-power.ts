import { usualAlpha } from '../physics/coefficients.ts'
import type { DiodeModel } from '../physics/diode-model.ts'
import { fitDiode, type Ratings } from '../physics/fit-diode.ts'
import { linearPowerTable, powerTable, type PowerTable } from '../physics/power-table.ts'
import { onceEach } from '../records/once-each.ts'
import type { Panel } from '../records/records.generated.ts'
import { relative } from './inputs.ts'

/** Power of a panel by irradiance and cell temperature, and which model gave it. */
export interface PanelPower {
  readonly table: PowerTable
  readonly model: string
  /** The diode, where one fits. */
  readonly diode: DiodeModel | null
}

/** From the single-diode model where one fits the sheet, else linear in sun and temperature; null where the sheet says too little. */
export const panelPower = onceEach(work)

function work({ stc: { pmax, vmp, imp, voc, isc }, temperature_coefficients: c, cells }: Panel): PanelPower | null {
  const gamma = relative(c.pmax, pmax)
  if (!pmax || pmax.value <= 0 || gamma === undefined) return null
  const beta = relative(c.voc, voc)
  if (vmp && imp && voc && isc && beta !== undefined) {
    const alpha = relative(c.isc, isc) ?? usualAlpha
    const ratings = {
      pmax: pmax.value,
      vmp: vmp.value,
      imp: imp.value,
      voc: voc.value,
      isc: isc.value,
      alpha,
      beta,
      gamma,
    }
    const fitted = fittedOf({ ...ratings, cells: cells.in_series?.value ?? null })
    if (fitted) return fitted
  }
  return {
    table: linearPowerTable(pmax.value, gamma),
    model: 'linear in sun and temperature, since no diode fits the sheet',
    diode: null,
  }
}

/** Panels of the same ratings have the same power, in whichever size and at whichever price they come. */
const fits = new Map<string, PanelPower | null>()

function fittedOf(ratings: Ratings): PanelPower | null {
  const key = Object.values(ratings).join(' ')
  const known = fits.get(key)
  if (known !== undefined) return known
  const fit = fitDiode(ratings)
  const made = fit.ok
    ? { table: powerTable(fit.params), model: 'single-diode model of the sheet', diode: fit.params }
    : null
  if (fits.size >= 64) fits.clear()
  fits.set(key, made)
  return made
}
