/** Weighted normal mixture by expectation and maximisation; with `fixed` only the weights move. Extra variance is rounding. */
export function fitMixture(xs, variances, start, fixed = false) {
  let parts = start
  for (let step = 0; step < 200; step++) {
    const sums = parts.map(() => [1e-3, 0, 0])
    xs.forEach((x, i) => {
      const extra = variances?.[i] ?? 0
      const densities = parts.map(
        ([w, m, s]) => (w * Math.exp((-(x - m) * (x - m)) / 2 / (s * s + extra))) / Math.sqrt(s * s + extra),
      )
      const total = densities.reduce((a, b) => a + b, 1e-9)
      densities.forEach((d, k) => {
        sums[k][0] += d / total
        sums[k][1] += (d / total) * x
        sums[k][2] += (d / total) * x * x
      })
    })
    const all = sums.reduce((sum, [n]) => sum + n, 0)
    parts = parts.map(([, m, s], k) => {
      const [n, sum, squares] = sums[k]
      const weight = Math.max(0.005, n / all)
      return fixed
        ? [weight, m, s]
        : [weight, sum / n, Math.max(0.02, Math.sqrt(Math.max(0, squares / n - (sum / n) ** 2)))]
    })
  }
  return parts.map((part) => part.map((v) => Number(v.toPrecision(4))))
}
