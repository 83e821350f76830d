import { estimateCoefficients } from '../../server/src/physics/coefficients.ts'
import { diodeAt } from '../../server/src/physics/diode-model.ts'
import { fitDiode, type Ratings } from '../../server/src/physics/fit-diode.ts'
import { maxPower, openCircuit } from '../../server/src/physics/single-diode.ts'
import { shortCircuit } from '../physics/models/short-circuit.ts'
import { number, readTable } from './read-table.ts'

export interface Share {
  readonly technology: string
  readonly rows: number
  /** Rows with a fit whose ideality is at least 2/3; of these, rows that also meet gamma. */
  readonly fits: number
  readonly meetGamma: number
  /** Rows with any fit, where the cell count is left out. */
  readonly anyIdeality: number
}

/** Which of the open ratings a diode can have. A missing gamma is replaced by its estimate. */
export function openShares(): Share[] {
  const shares = new Map<string, { rows: number; fits: number; meetGamma: number; anyIdeality: number }>()
  for (const row of openRows()) {
    const share = shares.get(row.technology) ?? { rows: 0, fits: 0, meetGamma: 0, anyIdeality: 0 }
    shares.set(row.technology, share)
    share.rows++
    const fit = fitDiode(row.ratings)
    if (fit.ok) share.fits++
    if (fit.ok && Math.abs(fit.params.gammaResidual) < 1e-6) share.meetGamma++
    if (fitDiode({ ...row.ratings, cells: null }).ok) share.anyIdeality++
  }
  return [...shares].map(([technology, share]) => ({ technology, ...share })).sort((a, b) => b.rows - a.rows)
}

/** Power at 800 W/m2 and NOCT as the model gives it over what the sheet prints, for rows that print it and have no flaw. */
export function noctRatios(): number[] {
  return openRows().flatMap(({ ratings, row }) => {
    const fit = fitDiode(ratings)
    const sheet = number(row.imp_noct_a) * number(row.vmp_noct_v)
    if (!fit.ok || !(sheet > 0) || row.suspect !== '') return []
    return [maxPower(diodeAt(fit.params, 800, number(row.noct_c))).p / sheet]
  })
}

export interface MeasuredFit {
  /** Largest relative difference of Pmax, Vmp, Imp, Voc, Isc at standard test conditions. */
  readonly atStc: number
  /** Relative differences at 60 °C and 1000 W/m2 from the measured coefficients. */
  readonly vmpHot: number
  readonly impHot: number
  /** Coefficient of Pmax estimated from those of Isc and Voc, less the measured one [1/K]. */
  readonly gamma: number
}

/** Fits to laboratory measurements of crystalline modules. */
export function measuredFits(): { rows: number; fits: MeasuredFit[] } {
  const rows = readTable('measured-modules.csv').filter(({ technology }) => /c-Si|mc-Si/.test(technology!))
  const fits = rows.flatMap((row) => {
    const [voc, vmp, isc, imp] = [row.voc_v, row.vmp_v, row.isc_a, row.imp_a].map(number) as [
      number,
      number,
      number,
      number,
    ]
    const alphaImp = number(row.alpha_imp_per_c)
    const betaVmp = number(row.beta_vmp_v_per_c) / vmp
    const alpha = number(row.alpha_isc_per_c)
    const beta = number(row.beta_voc_v_per_c) / voc
    const cells = number(row.cells_in_series)
    const fit = fitDiode({ pmax: vmp * imp, vmp, imp, voc, isc, cells, alpha, beta, gamma: alphaImp + betaVmp })
    if (!fit.ok) return []
    const stc = diodeAt(fit.params, 1000, 25)
    const best = maxPower(stc)
    const hot = maxPower(diodeAt(fit.params, 1000, 60))
    const differences = [
      best.v / vmp,
      best.i / imp,
      best.p / (vmp * imp),
      openCircuit(stc) / voc,
      shortCircuit(stc) / isc,
    ]
    return [
      {
        atStc: Math.max(...differences.map((ratio) => Math.abs(ratio - 1))),
        vmpHot: hot.v / (vmp * (1 + 35 * betaVmp)) - 1,
        impHot: hot.i / (imp * (1 + 35 * alphaImp)) - 1,
        gamma: estimateCoefficients(voc, vmp, alpha, beta).gamma - (alphaImp + betaVmp),
      },
    ]
  })
  return { rows: rows.length, fits }
}

function openRows(): { technology: string; ratings: Ratings; row: Record<string, string> }[] {
  return readTable('modules-open.csv').map((row) => {
    const [pmax, vmp, imp, voc, isc] = [row.pmax_w, row.vmp_v, row.imp_a, row.voc_v, row.isc_a].map(number) as [
      number,
      number,
      number,
      number,
      number,
    ]
    const alpha = number(row.alpha_isc_pct_per_c) / 100
    const beta = number(row.beta_voc_pct_per_c) / 100
    const gamma = row.gamma_pmp_pct_per_c
      ? number(row.gamma_pmp_pct_per_c) / 100
      : estimateCoefficients(voc, vmp, alpha, beta).gamma
    const cells = row.cells_in_series ? number(row.cells_in_series) : null
    return { technology: row.technology!, ratings: { pmax, vmp, imp, voc, isc, cells, alpha, beta, gamma }, row }
  })
}
