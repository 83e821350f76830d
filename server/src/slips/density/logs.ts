import type { Mixture } from '../model/calibration.ts'

/** Finite also for what is typed as 0 or below. */
export const ln = (x: number) => (x > 1e-9 ? Math.log(x) : -20)

/** Half a unit of the last digit as a share of the value; no coarser than 3 %, so that gross slips still show. */
export const relative = (half: number, value: number) => Math.min(half / Math.max(Math.abs(value), 1e-9), 0.03)

/** Far tails are flat, as whatever goes wrong there has no scale. */
export function mixtureLog(mixture: Mixture, x: number, variance = 0): number {
  let density = 1e-6 / (1 + x * x)
  for (const [weight, mean, sd] of mixture) {
    const square = sd * sd + variance
    density += (weight * Math.exp((-(x - mean) * (x - mean)) / (2 * square))) / Math.sqrt(2 * Math.PI * square)
  }
  return Math.log(density)
}

/** The most that a mixture reaches, to within a little. */
export const peak = (mixture: Mixture) => Math.max(...mixture.map(([, mean]) => mixtureLog(mixture, mean)))
