/**
 * Lambert W of an argument given by its logarithm, so that nothing overflows: the w with w + ln w = y, which is W(e^y).
 *
 * Accurate to a few units in the last place for every finite y; below y = -745 it underflows to 0.
 *
 * @param y  logarithm of the argument [1]
 * @returns  w > 0 [1]
 * @source R. M. Corless et al., "On the Lambert W function", Advances in Computational Mathematics 5 (1996) 329-359;
 *         iteration of F. N. Fritsch, R. E. Shafer, W. P. Crowley, Communications of the ACM 16 (1973) 123-124
 */
export function lambertWOfExp(y: number): number {
  if (y < -40) return Math.exp(y)
  if (y > 1e100) return y
  let w = y > 2 ? y - Math.log(y) : y > -1 ? 0.5671 * Math.exp(0.638 * y) : Math.exp(y)
  for (let step = 0; step < 3; step++) {
    const z = y - Math.log(w) - w
    const q = 2 * (1 + w) * (1 + w + (2 / 3) * z)
    w *= 1 + ((z / (1 + w)) * (q - z)) / (q - 2 * z)
    // each step brings the error to its fourth power
    if (Math.abs(z) < 1e-4 * (1 + w)) break
  }
  return w
}
