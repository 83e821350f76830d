import { describe, expect, test } from 'vitest'
import { tilted } from '../../server/src/slips/model/technologies.ts'
import type { CalibratedPart } from '../../server/src/slips/model/calibration.ts'

/** Places among the features. */
const place = { voc: 0, gamma: 4, beta: 5, alpha: 6 } as const
const features = 10
const usualVoc = Math.log(0.633)

const diagonal = (variance: number, [i, j, both]: readonly [number, number, number] = [0, 0, variance]) =>
  Array.from({ length: features }, (_, a) =>
    Array.from({ length: features }, (_, b) =>
      a === b ? variance : (a === i && b === j) || (a === j && b === i) ? both : 0,
    ),
  )

/** One component of any cells, all features at 0 but those of cells. */
const part = (voc: number, weight = 1, covariance = diagonal(0.01)): CalibratedPart => {
  const mean = Array.from({ length: features }, () => 0)
  Object.assign(mean, { [place.voc]: Math.log(voc), [place.gamma]: -0.38, [place.beta]: -0.29, [place.alpha]: 0.047 })
  return { weight, mean, covariance }
}

const meanOf = (parts: readonly CalibratedPart[], i: number) =>
  parts.reduce((sum, { weight, mean }) => sum + weight * mean[i]!, 0) /
  parts.reduce((sum, { weight }) => sum + weight, 0)

test.each([undefined, '', 'cigs', 'other'])('nothing is known of the cells of %s', (technology) => {
  const parts = [part(0.65)]
  expect(tilted(parts, technology)).toBe(parts)
})

describe('what cells of a technology are like', () => {
  // V a cell, %/K of Pmax and of Voc
  test.each([
    ['mono', 0.633, -0.41, -0.31],
    ['poly', 0.615, -0.43, -0.32],
    ['perc', 0.663, -0.37, -0.285],
    ['topcon', 0.7, -0.31, -0.255],
    ['hjt', 0.725, -0.27, -0.25],
    ['back-contact', 0.695, -0.335, -0.265],
  ])('%s is drawn to %s V, %s and %s %%/K', (technology, voc, gamma, beta) => {
    const [own] = tilted([part(0.65)], technology)
    const way = [
      [place.voc, Math.log(voc)],
      [place.gamma, gamma],
      [place.beta, beta],
    ] as const
    const off = way.map(([i, to]) => Math.abs(own!.mean[i]! - to) / Math.abs(part(0.65).mean[i]! - to))
    // the component is much wider than what is usual, so that nearly all of the way is gone
    for (const share of off) expect(share).toBeLessThan(0.15)
  })
})

test('what a feature hangs on moves with it, and nothing else does', () => {
  const [own] = tilted([part(0.7, 1, diagonal(0.01, [place.voc, 1, 0.005]))], 'mono')
  expect(own!.mean[place.voc]).toBeLessThan(Math.log(0.7))
  const moved = own!.mean[place.voc]! - Math.log(0.7)
  expect(own!.mean[1]).toBeCloseTo(0.5 * moved, 10)
  expect(own!.mean[2]).toBe(0)
})

test('the product of two normals is between them and narrower than both', () => {
  const [own] = tilted([part(0.7)], 'mono')
  const [variance, usual] = [0.01, 0.04 ** 2]
  expect(own!.mean[place.voc]).toBeCloseTo((Math.log(0.7) * usual + usualVoc * variance) / (usual + variance), 10)
  expect(own!.covariance[place.voc]![place.voc]).toBeCloseTo((variance * usual) / (variance + usual), 10)
  expect(own!.covariance[2]![2]).toBe(0.01)
})

test('components that have such cells gain weight, others lose it', () => {
  const narrow = diagonal(0.0004)
  const parts = [part(0.62, 0.5, narrow), part(0.7, 0.5, narrow)]
  const weightNear = (technology: string, voc: number) =>
    tilted(parts, technology)
      .filter(({ mean }) => Math.abs(mean[place.voc]! - Math.log(voc)) < 0.06)
      .reduce((sum, { weight }) => sum + weight, 0)
  expect(weightNear('poly', 0.62)).toBeGreaterThan(weightNear('poly', 0.7))
  expect(weightNear('topcon', 0.7)).toBeGreaterThan(weightNear('topcon', 0.62))
})

test.each(['mono', 'poly', 'perc', 'topcon', 'hjt', 'back-contact'])(
  'one record in twelve that names %s has other cells',
  (technology) => {
    const parts = [part(0.62, 0.5), part(0.7, 0.5)]
    const all = tilted(parts, technology)
    const sum = all.reduce((total, { weight }) => total + weight, 0)
    // what is hardly ever the likeliest is left out
    expect(sum).toBeGreaterThan(0.98)
    expect(sum).toBeLessThanOrEqual(1 + 1e-9)
    const others = all.filter(({ mean }) => parts.some((one) => one.mean === mean))
    expect(others.reduce((total, { weight }) => total + weight, 0)).toBeCloseTo(0.08, 10)
    for (const { weight } of all) expect(weight).toBeGreaterThan(0.002)
  },
)

test('the order of technologies by voltage is that of their cells', () => {
  const voltages = ['poly', 'mono', 'perc', 'back-contact', 'topcon', 'hjt'].map((technology) =>
    meanOf(tilted([part(0.65)], technology), place.voc),
  )
  expect(voltages).toEqual(voltages.toSorted((a, b) => a - b))
})
