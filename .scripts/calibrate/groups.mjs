import { mixtureOfT } from './multivariate-t.mjs'
import { fitMixture } from './mixture.mjs'
import { modelSource } from './model-source.mjs'
import { round } from './round.mjs'
import { siblings } from './siblings.mjs'
import { coordinatesOf, groupOf, weightsOf } from './ratings.mjs'

/** Kinds of panel within a group of technologies; more of them see no more mistakes on unseen families. */
const components = 6

/** The calibration of every group from rows of the open table. */
export async function calibrate(rows) {
  const model = await modelSource(
    `export { features, usable } from './density/features.ts'; export { coreOf } from './density/core.ts'; export { oddShares } from './density/odd-shares.ts'`,
  )
  const of = (group) =>
    calibrateGroup(
      rows.filter((row) => groupOf(row) === group),
      model,
    )
  return { mono: of('mono'), poly: of('poly'), thin: of('thin'), siblings: await siblings(rows) }
}

function calibrateGroup(rows, { features, usable, coreOf, oddShares }) {
  const points = rows.map(coordinatesOf)
  const weights = weightsOf(rows)
  const x = points.map((y) => features.map((row) => row.reduce((sum, f, c) => (f ? sum + f * y[c] : sum), 0)))
  // cells that are not counted alike: only the joined feature is known, and stands in the second one's place
  const uncounted = points.every((y) => Number.isNaN(y[0]))
  if (uncounted) points.forEach((y, i) => (x[i][1] = y[2] + y[3] - y[1]))
  // about by the age of the cells: low coefficients go with high voltage
  const order = sum(standardised(x, 4), standardised(x, 0))
  const parts = mixtureOfT(x, weights, order, rows.length < 500 ? 1 : components)
  if (uncounted) for (const { covariance } of parts) covariance[0][0] = 1e-6
  const start = { parts, regular: 0.9, odd: points[0].map(() => 0.1 / 12) }
  const shares = oddShares(start, points, weights)
  const listed = rows.filter((row) => row.pmax_is === 'listed')
  const logProduct = (row) => Math.log((row.vmp_v * row.imp_a) / row.pmax_w)
  const roundings = (row) => (0.005 / row.vmp_v) ** 2 / 3 + (0.005 / row.imp_a) ** 2 / 3
  const sided = rows.filter((row) => row.length_mm && row.width_mm)
  const counted = points.filter((y) => !Number.isNaN(y[0] + y[1]))
  return {
    parts: parts.map(({ weight, mean, covariance }) => ({
      weight: round(weight, 4),
      mean: mean.map((v) => round(v, 7)),
      covariance: covariance.map((line) => line.map((v) => round(v, 6))),
    })),
    regular: round(shares.regular, 4),
    odd: shares.odd.map((v) => round(v, 3)),
    cellArea: counted.length
      ? fitMixture(
          counted.map((y) => y[1] - y[0]),
          null,
          [
            [0.5, Math.log(0.027), 0.05],
            [0.3, Math.log(0.031), 0.1],
            [0.2, Math.log(0.02), 0.3],
          ],
        )
      : [],
    aspect: fitMixture(
      sided.map((row) => Math.log(row.length_mm / row.width_mm)),
      null,
      [
        [0.9, Math.log(1.7), 0.1],
        [0.1, Math.log(1.7), 0.4],
      ],
    ),
    product: fitMixture(
      listed.map(logProduct),
      listed.map(roundings),
      [
        [0.85, 0, 0.0005],
        [0.1, 0, 0.004],
        [0.03, 0, 0.012],
        [0.02, 0, 0.03],
      ],
      true,
    ),
  }
}

/** A feature of all rows in standard deviations from its mean; 0 where missing. */
function standardised(xs, j) {
  const ok = xs.map((x) => x[j]).filter((v) => !Number.isNaN(v))
  const mean = ok.reduce((a, b) => a + b, 0) / ok.length
  const sd = Math.sqrt(ok.reduce((a, v) => a + (v - mean) ** 2, 0) / ok.length) || 1
  return xs.map((x) => (Number.isNaN(x[j]) ? 0 : (x[j] - mean) / sd))
}

const sum = (a, b) => a.map((v, i) => v + b[i])
