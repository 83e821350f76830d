import { expect, test } from 'vitest'
import { weightLog, weightMost, weightOf } from '../../server/src/slips/density/weight.ts'
import type { Reading } from '../../server/src/slips/evidence.ts'

const reading = (value: number, half: number): Reading => ({ value, half, text: String(value) })
const panel = (kg: number | null, mm: number | null = null, construction: string | undefined = 'flexible') =>
  weightOf({
    construction,
    readings: {
      ...(kg !== null && { '/weight': reading(kg, 0.05) }),
      ...(mm !== null && { '/size/thickness': reading(mm / 1000, 5e-5) }),
    },
  })
/** Logarithm of the density of a weight on one square metre. */
const log = (kg: number, mm: number | null = null) => weightLog(panel(kg, mm)!, 2, 0.5)

test.each([
  ['glass', panel(20, null, 'rigid')],
  ['a folding panel', panel(6, null, 'folding')],
  ['a panel of which nobody says what it is', weightOf({ readings: { '/weight': reading(3, 0.05) } })],
  ['a panel without a weight', panel(null, 2.5)],
  ['a weight of nothing', panel(0)],
  ['a weight below nothing', panel(-2)],
  ['a board of 4 mm', panel(4, 4)],
  ['a thickness of nothing', panel(3, 0)],
])('nothing is known of the weight of %s', (_, weight) => {
  expect(weight).toBeUndefined()
})

test.each([2.5, 3, 3.5])('%s kg/m2 is usual', (kg) => {
  expect(weightMost(panel(kg)!) - log(kg)).toBeLessThan(0.5)
})

// kg/m2 and mm: as it is, and a slip of it
test.each([
  ['pounds typed as kilograms', 3, 6.6, null],
  ['kilograms typed as pounds', 3, 1.36, null],
  ['a point moved', 3, 30, null],
  ['pounds at a known thickness', 2.9, 6.4, 2.3],
  ['a digit dropped at a known thickness', 3.1, 1.3, 2.5],
])('%s: %s kg/m2 is likelier than %s', (_, meant, typed, mm) => {
  expect(log(meant, mm) - log(typed, mm)).toBeGreaterThan(1.5)
})

test.each([
  [2, 2.5],
  [2.5, 3.125],
  [3, 3.75],
  [3.4, 4.25],
])('%s mm of films and cells weigh about %s kg/m2', (mm, kg) => {
  for (const factor of [0.8, 1.25]) expect(log(kg, mm)).toBeGreaterThan(log(kg * factor, mm) + 0.3)
})

test('a known thickness says more than none', () => {
  expect(log(3.125, 2.5)).toBeGreaterThan(log(3.125))
  expect(log(1.9, 3.4)).toBeLessThan(log(1.9))
})

test('at other sides the same weight is another weight per area', () => {
  const weight = panel(3)!
  expect(weightLog(weight, 1, 1)).toBeCloseTo(weightLog(weight, 2, 0.5), 10)
  // a side of 1 m typed as 1 cm or as 10 m
  for (const side of [0.01, 10]) expect(weightLog(weight, side, 1)).toBeLessThan(weightLog(weight, 1, 1) - 3)
})

test.each([
  [3, null],
  [2.8, 2.2],
  [9, null],
  [0.4, 1.5],
])('no sides make %s kg at %s mm likelier than the most', (kg, mm) => {
  const weight = panel(kg, mm)!
  for (const length of [0.1, 0.5, 1, 2, 4, 30])
    expect(weightLog(weight, length, 0.7)).toBeLessThanOrEqual(weightMost(weight) + 1e-9)
})

test('a weight that is printed more coarsely says less', () => {
  const coarse = weightOf({ construction: 'flexible', readings: { '/weight': reading(3, 0.08) } })!
  expect(coarse.variance).toBeGreaterThan(panel(3)!.variance)
  expect(coarse.variance).toBeCloseTo((0.08 / 3) ** 2 / 3, 8)
})
