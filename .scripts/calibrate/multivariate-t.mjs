const nu = 5
/** Rows' worth of independence that the scale of a component is drawn towards. */
const shrink = 10

/**
 * Weights, means and scales of a mixture of multivariate t distributions with gaps in the data, by expectation and
 * maximisation (D. Peel, G. J. McLachlan, "Robust mixture modelling using the t distribution", Statistics and Computing 10
 * (2000) 339-348; gaps as K. L. Lange, R. J. A. Little, J. M. G. Taylor, "Robust statistical modeling using the t
 * distribution", JASA 84 (1989) 881-896; both from memory).
 *
 * @param xs    rows of features, NaN where missing
 * @param order what the rows are divided by at the start, lowest to the first component
 * @param count of components
 */
export function mixtureOfT(xs, weights, order, count) {
  const d = xs[0].length
  const variances = columns(d, (j) => variance(xs.map((x) => x[j])))
  let parts = start(xs, order, count, variances)
  for (let step = 0; step < 80; step++) {
    const cache = new Map()
    const sums = parts.map(() => ({ rows: 0, scatter: columns(d, () => new Array(d).fill(0)), filled: [] }))
    xs.forEach((x, row) => {
      const seen = columns(d, (j) => j).filter((j) => !Number.isNaN(x[j]))
      const fits = parts.map((part, k) => fit(part, x, seen, cache, k))
      const top = Math.max(...fits.map(({ log }) => log))
      const total = fits.reduce((sum, { log }) => sum + Math.exp(log - top), 0)
      fits.forEach(({ log, distance, full, left }, k) => {
        const share = (weights[row] * Math.exp(log - top)) / total
        if (share < 1e-6) return
        const { scatter, filled } = sums[k]
        sums[k].rows += share
        filled.push({ full, weight: (share * (nu + seen.length)) / (nu + distance) })
        for (let i = 0; i < d; i++) for (let j = 0; j < d; j++) scatter[i][j] += share * left[i][j]
      })
    })
    const all = sums.reduce((sum, { rows }) => sum + rows, 0)
    parts = sums.map(({ rows, scatter, filled }) => {
      const sum = filled.reduce((s, { weight }) => s + weight, 0)
      const mean = columns(d, (j) => filled.reduce((s, { full, weight }) => s + weight * full[j], 0) / sum)
      for (const { full, weight } of filled)
        for (let i = 0; i < d; i++)
          for (let j = 0; j < d; j++) scatter[i][j] += weight * (full[i] - mean[i]) * (full[j] - mean[j])
      const drawn = (v, i, j) => (v + (i === j ? 0.05 * shrink * variances[i] : 0)) / (rows + shrink)
      return { weight: rows / all, mean, covariance: scatter.map((line, i) => line.map((v, j) => drawn(v, i, j))) }
    })
  }
  return parts
}

function start(xs, order, count, variances) {
  const sorted = xs.map((_, i) => i).sort((a, b) => order[a] - order[b])
  return columns(count, (k) => {
    const own = sorted.slice((k * xs.length) / count, ((k + 1) * xs.length) / count).map((i) => xs[i])
    const mean = variances.map((_, j) => average(own.map((x) => x[j])) ?? average(xs.map((x) => x[j])) ?? 0)
    const covariance = variances.map((v, i) => variances.map((_, j) => (i === j ? v / (count > 1 ? 2 : 1) : 0)))
    return { weight: 1 / count, mean, covariance }
  })
}

/** How well a component fits a row, and the row with its gaps filled. */
function fit({ weight, mean, covariance }, x, seen, cache, k) {
  const key = `${k} ${seen}`
  if (!cache.has(key)) cache.set(key, conditional(covariance, seen))
  const { inverse, regression, left, logDet } = cache.get(key)
  const off = seen.map((j) => x[j] - mean[j])
  const distance = off.reduce((sum, a, i) => sum + a * off.reduce((s, b, j) => s + inverse[i][j] * b, 0), 0)
  const full = mean.map((m, j) => m + regression[j].reduce((sum, r, i) => sum + r * off[i], 0))
  const log = Math.log(weight) - logDet / 2 - ((nu + seen.length) / 2) * Math.log1p(distance / nu)
  return { log, distance, full, left }
}

/** What the seen features say of all: factors of the seen ones, and the covariance that is left. */
function conditional(covariance, seen) {
  const d = covariance.length
  const { inverse, logDet } = invert(seen.map((i) => seen.map((j) => covariance[i][j])))
  const regression = columns(d, (i) =>
    seen.map((_, b) => seen.reduce((sum, j, a) => sum + covariance[i][j] * inverse[a][b], 0)),
  )
  const left = columns(d, (i) =>
    columns(d, (j) =>
      seen.includes(i) || seen.includes(j)
        ? 0
        : covariance[i][j] - regression[i].reduce((sum, r, a) => sum + r * covariance[seen[a]][j], 0),
    ),
  )
  return { inverse, logDet, regression, left }
}

function invert(matrix) {
  const n = matrix.length
  const a = matrix.map((row, i) => [...row, ...columns(n, (j) => (i === j ? 1 : 0))])
  let logDet = 0
  for (let i = 0; i < n; i++) {
    const pivot = a[i][i]
    logDet += Math.log(pivot)
    for (let k = 0; k < 2 * n; k++) a[i][k] /= pivot
    for (let r = 0; r < n; r++) {
      const factor = a[r][i]
      if (r !== i) for (let k = 0; k < 2 * n; k++) a[r][k] -= factor * a[i][k]
    }
  }
  return { inverse: a.map((row) => row.slice(n)), logDet }
}

const columns = (n, f) => Array.from({ length: n }, (_, i) => f(i))
const known = (xs) => xs.filter((x) => !Number.isNaN(x))

function average(xs) {
  const ok = known(xs)
  return ok.length > 0 ? ok.reduce((a, b) => a + b, 0) / ok.length : null
}

function variance(xs) {
  const ok = known(xs)
  if (ok.length < 2) return 1
  const mean = average(ok)
  return ok.reduce((sum, x) => sum + (x - mean) ** 2, 0) / ok.length
}
