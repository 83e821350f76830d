const nu = 5

/**
 * Mean and scale of a multivariate t with gaps in the data, by expectation and maximisation (K. L. Lange, R. J. A. Little,
 * J. M. G. Taylor, "Robust statistical modeling using the t distribution", JASA 84 (1989) 881-896, from memory).
 *
 * @param xs     rows of features, NaN where missing
 * @param shrink rows' worth of independence that the scale is drawn towards, for small groups
 */
export function multivariateT(xs, weights, shrink) {
  const d = xs[0].length
  let mean = columns(d, (j) => median(xs.map((x) => x[j])))
  let covariance = columns(d, (i) => columns(d, (j) => (i === j ? variance(xs.map((x) => x[j])) : 0)))
  for (let step = 0; step < 60; step++) {
    const filled = []
    const scatter = columns(d, () => new Array(d).fill(0))
    const cache = new Map()
    xs.forEach((x, row) => {
      const seen = columns(d, (j) => j).filter((j) => !Number.isNaN(x[j]))
      const key = seen.join()
      if (!cache.has(key)) cache.set(key, conditional(covariance, seen))
      const { inverse, regression, left } = cache.get(key)
      const off = seen.map((j) => x[j] - mean[j])
      const distance = off.reduce((sum, a, i) => sum + a * off.reduce((s, b, j) => s + inverse[i][j] * b, 0), 0)
      const full = columns(d, (j) => mean[j] + regression[j].reduce((sum, r, i) => sum + r * off[i], 0))
      filled.push({ full, weight: (weights[row] * (nu + seen.length)) / (nu + distance) })
      for (let i = 0; i < d; i++) for (let j = 0; j < d; j++) scatter[i][j] += weights[row] * left[i][j]
    })
    const sum = filled.reduce((s, { weight }) => s + weight, 0)
    mean = columns(d, (j) => filled.reduce((s, { full, weight }) => s + weight * full[j], 0) / sum)
    for (const { full, weight } of filled)
      for (let i = 0; i < d; i++)
        for (let j = 0; j < d; j++) scatter[i][j] += weight * (full[i] - mean[i]) * (full[j] - mean[j])
    const count = weights.reduce((a, b) => a + b, 0)
    covariance = scatter.map((line, i) => line.map((v, j) => (i === j ? v / count : v / (count + shrink))))
  }
  return { mean, covariance }
}

/** What the seen features say of all: factors of the seen ones, and the covariance that is left. */
function conditional(covariance, seen) {
  const d = covariance.length
  const inverse = invert(seen.map((i) => seen.map((j) => covariance[i][j])))
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
  return { inverse, regression, left }
}

function invert(matrix) {
  const n = matrix.length
  const a = matrix.map((row, i) => [...row, ...columns(n, (j) => (i === j ? 1 : 0))])
  for (let i = 0; i < n; i++) {
    const pivot = a[i][i]
    for (let k = 0; k < 2 * n; k++) a[i][k] /= pivot
    for (let r = 0; r < n; r++) {
      const factor = a[r][i]
      if (r !== i) for (let k = 0; k < 2 * n; k++) a[r][k] -= factor * a[i][k]
    }
  }
  return a.map((row) => row.slice(n))
}

const columns = (n, f) => Array.from({ length: n }, (_, i) => f(i))
const known = (xs) => xs.filter((x) => !Number.isNaN(x)).sort((a, b) => a - b)

function median(xs) {
  const sorted = known(xs)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}

function variance(xs) {
  const ok = known(xs)
  if (ok.length < 2) return 1
  const mean = ok.reduce((a, b) => a + b, 0) / ok.length
  return ok.reduce((sum, x) => sum + (x - mean) ** 2, 0) / ok.length
}
