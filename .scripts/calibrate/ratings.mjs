import { readFileSync } from 'node:fs'

/** Rows of the open table as numbers where they are numbers. */
export function readRatings(path) {
  const [head, ...lines] = readFileSync(path, 'utf8')
    .trim()
    .split(/\r?\n/)
    .map((line) => line.split(','))
  return lines.map((line) =>
    Object.fromEntries(
      head.map((name, i) => [name, line[i] === '' ? null : isNaN(line[i]) ? line[i] : Number(line[i])]),
    ),
  )
}

const groups = { 'Mono-c-Si': 'mono', 'HIT-Si': 'mono', 'Multi-c-Si': 'poly' }

/** Rows that the table itself marks are left out. */
export const groupOf = ({ technology, suspect, voc_v, isc_a, vmp_v, imp_a }) =>
  !suspect && voc_v && isc_a && vmp_v && imp_a ? (groups[technology] ?? 'thin') : null

export const rounded = (x, decimals) => (x === null ? NaN : Number(x.toFixed(decimals)))

/** In m2, from the sides where they are listed. */
export const areaOf = ({ length_mm, width_mm, area_m2 }) =>
  length_mm && width_mm ? (length_mm * width_mm) / 1e6 : area_m2

/** The coordinates of the model, in the order of server/src/slips/density/features.ts, rounded as datasheets print them. */
export function coordinatesOf(row) {
  const counted = groupOf(row) !== 'thin'
  const area = areaOf(row)
  const ln = (x) => (x > 0 ? Math.log(x) : NaN)
  return [
    counted ? ln(row.cells_in_series) : NaN,
    ln(area),
    ln(row.voc_v),
    ln(row.isc_a),
    ln(row.vmp_v),
    ln(row.imp_a),
    rounded(row.gamma_pmp_pct_per_c || null, 2),
    rounded(row.beta_voc_pct_per_c || null, 2),
    rounded(row.alpha_isc_pct_per_c || null, 3),
    rounded(row.noct_c, 0),
    ln(row.imp_noct_a),
    ln(row.imp_noct_a && row.vmp_noct_v),
  ]
}

/** A family counts by the square root of its size, as its rows differ in little but the power class. */
export function weightsOf(rows) {
  const sizes = new Map()
  for (const row of rows) sizes.set(row.family ?? row.id, (sizes.get(row.family ?? row.id) ?? 0) + 1)
  return rows.map((row) => sizes.get(row.family ?? row.id) ** -0.5)
}
