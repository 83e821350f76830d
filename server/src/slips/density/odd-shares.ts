import { coreOf, standOf } from './core.ts'
import { densities, terms } from './densities.ts'
import { coordinates } from './features.ts'
import type { Joint } from './pattern.ts'

/**
 * In how many true records nothing is odd, and in how many each coordinate is, by expectation and maximisation. For the
 * calibration; kept beside the density that it fits.
 *
 * @param points coordinates of true records, NaN where missing
 */
export function oddShares(
  start: Joint,
  points: readonly (readonly number[])[],
  weights: readonly number[],
): { regular: number; odd: number[] } {
  let { regular, odd } = { regular: start.regular, odd: [...start.odd] }
  for (let step = 0; step < 25; step++) {
    const group = { ...start, regular, odd }
    const cores = new Map<string, ReturnType<typeof coreOf>>()
    let whole = 0
    let plain = 0
    const sums = new Array<number>(coordinates).fill(0)
    const chances = new Array<number>(coordinates).fill(0)
    points.forEach((point, i) => {
      const present = point.map((v) => !Number.isNaN(v))
      const key = present.join()
      const core = cores.get(key) ?? coreOf(group, present, new Float64Array(coordinates))
      cores.set(key, core)
      const y = Float64Array.from(point, (v) => (Number.isNaN(v) ? 0 : v))
      const shares = new Array<number>(terms).fill(0)
      densities(core, standOf(core, y), y)!.forEach((density, at) => (shares[at % terms]! += density))
      const total = shares.reduce((a, b) => a + b, 0)
      const weight = weights[i]!
      whole += weight
      plain += (weight * shares[0]!) / total
      for (let c = 0; c < coordinates; c++)
        if (core.formed[c]) {
          sums[c]! += (weight * shares[c + 1]!) / total
          chances[c]! += weight
        }
    })
    regular = plain / whole
    odd = sums.map((s, c) => Math.max(1e-3, s / Math.max(1, chances[c]!)))
  }
  return { regular, odd }
}
