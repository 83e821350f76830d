import { areaOf, groupOf } from './ratings.mjs'

const percents = [0.1, 0.5, 1, 5, 50, 95, 99, 99.5, 99.9]

const ratios = {
  fillFactor: (r) => (r.vmp_v * r.imp_a) / (r.voc_v * r.isc_a),
  vmpPerVoc: (r) => r.vmp_v / r.voc_v,
  impPerIsc: (r) => r.imp_a / r.isc_a,
  vocPerCell: (r) => r.voc_v / r.cells_in_series,
  vmpPerCell: (r) => r.vmp_v / r.cells_in_series,
  efficiency: (r) => r.pmax_w / (1000 * areaOf(r)),
  cellCurrentDensity: (r) => (r.isc_a * r.cells_in_series) / areaOf(r) / 10,
  gamma: (r) => r.gamma_pmp_pct_per_c,
  beta: (r) => r.beta_voc_pct_per_c,
  alpha: (r) => r.alpha_isc_pct_per_c,
  gammaPerBeta: (r) => r.gamma_pmp_pct_per_c / r.beta_voc_pct_per_c,
  gammaLessAlphaBeta: (r) => r.gamma_pmp_pct_per_c - r.alpha_isc_pct_per_c - r.beta_voc_pct_per_c,
  cellVoltageAtZeroKelvin: (r) => (r.voc_v / r.cells_in_series) * (1 - (r.beta_voc_pct_per_c / 100) * 298.15),
  noct: (r) => r.noct_c,
  productPerPmax: (r) => (r.pmax_is === 'listed' ? (r.vmp_v * r.imp_a) / r.pmax_w : NaN),
  noctImpPerImp: (r) => r.imp_noct_a / r.imp_a,
  noctVmpPerVmp: (r) => r.vmp_noct_v / r.vmp_v,
  noctPmaxPerScaled: (r) =>
    (r.vmp_noct_v * r.imp_noct_a) / (0.8 * r.pmax_w * (1 + (r.gamma_pmp_pct_per_c / 100) * (r.noct_c - 25))),
  aspect: (r) => r.length_mm / r.width_mm,
  longerSide: (r) => r.length_mm / 1000,
  shorterSide: (r) => r.width_mm / 1000,
}

const needs = Object.fromEntries(
  Object.entries(ratios).map(([name, f]) => [
    name,
    [...f.toString().matchAll(/r\.(\w+)/g)].map((m) => m[1]).filter((k) => k !== 'pmax_is'),
  ]),
)

/** Percentiles of each ratio in each group, with the count of rows that have it. */
export function bands(rows) {
  return Object.fromEntries(
    Object.keys(ratios).map((name) => [
      name,
      Object.fromEntries(
        ['mono', 'poly', 'thin'].map((group) => [
          group,
          percentiles(
            rows.filter((r) => groupOf(r) === group),
            name,
          ),
        ]),
      ),
    ]),
  )
}

function percentiles(rows, name) {
  const complete = rows.filter((r) => needs[name].every((key) => r[key] !== null))
  const values = complete
    .map(ratios[name])
    .filter(Number.isFinite)
    .sort((a, b) => a - b)
  return { n: values.length, at: percents.map((p) => Number(at(values, p / 100).toPrecision(5))) }
}

function at(sorted, share) {
  const place = share * (sorted.length - 1)
  const low = Math.floor(place)
  const high = Math.min(low + 1, sorted.length - 1)
  return sorted[low] + (place - low) * (sorted[high] - sorted[low])
}
