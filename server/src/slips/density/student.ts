// freedom and width chosen by how well the search does on unseen halves of the open ratings, see test/slips/README.md
const nu = 5
const oddScale = 2.5
const oddNu = 30

/** Shape of the density of a multivariate t in `d` dimensions: (1 + q/ν)^(-(ν + d)/2). The square may be below 0 by rounding. */
export const tail = (square: number, d: number): number => inverseHalves(1 + Math.max(0, square) / nu, nu + d)

/**
 * The same of a coordinate that is honestly odd, or that a second mistake has put anywhere: one gross mistake must not hide what
 * the other fields say.
 */
export const oddTail = (square: number): number =>
  inverseHalves(1 + square / (oddNu * oddScale * oddScale), oddNu + 1) + anywhere / (1 + square / anywhereScale ** 2)

const anywhere = 1e-9
const anywhereScale = 100

/** x^(-n/2) for a whole n. Cheaper than by logarithms, and there are many. */
function inverseHalves(x: number, n: number): number {
  let power = n & 1 ? Math.sqrt(x) : 1
  let square = x
  for (let left = n >> 1; left > 0; left >>= 1) {
    if (left & 1) power *= square
    square *= square
  }
  return 1 / power
}

/** Γ((ν + d)/2) / Γ(ν/2) / (ν π)^(d/2) */
export function norm(d: number, freedom: number = nu): number {
  return Math.exp(logGamma((freedom + d) / 2) - logGamma(freedom / 2) - (d / 2) * Math.log(freedom * Math.PI))
}

export const oddNorm = norm(1, oddNu) / oddScale

/** By the recurrence of Γ, for half-integers from 1/2. */
function logGamma(x: number): number {
  let sum = x % 1 === 0 ? 0 : 0.5 * Math.log(Math.PI)
  for (let k = x % 1 === 0 ? 1 : 0.5; k < x; k++) sum += Math.log(k)
  return sum
}
