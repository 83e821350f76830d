import { expect, test } from 'vitest'
import { sharesOf, windowOf } from '../../server/src/review/hours-of-day.ts'
import { shortfallOf, yearOf } from '../../server/src/review/year.ts'
import { strong, system } from './cases.ts'

test.each([
  ['evening', 4, 17, 18, 0.25 * (4 / 6)],
  ['18..24 h', 6, 0, 18, 1 / 6],
  ['day', 10, 7, 8, 0.1],
  ['night', 8, 12, 2, 1 / 8],
  ['22:30-6', 7.5, 22, 23, 1 / 7.5],
])('%s for %f h: nothing at %i h, its share at %i h', (at, hours, never, then, share) => {
  const shares = sharesOf(windowOf(at), hours)
  expect(shares.reduce((sum, x) => sum + x, 0)).toBeCloseTo(1, 12)
  if (never !== 22) expect(shares[never]).toBe(0)
  if (at !== 'evening') expect(shares[then]).toBeCloseTo(share, 12)
})

test('what does not fit its window runs on the rest of the day', () => {
  const shares = sharesOf(windowOf('day'), 20)
  expect(shares[12]).toBeCloseTo(1 / 20, 12)
  expect(shares[3]).toBeCloseTo(10 / 20 / 14, 12)
})

test.each(['noon', '25..26 h', '18', ''])('%j is no time of day', (text) => expect(windowOf(text)).toBeNull())

// Own calculation: of a load by day the sun feeds a part without the battery; in the evening all of it comes out of it.
test('the same load goes unmet about twice as much in the evening as by day', () => {
  const lacking = (at: string) =>
    shortfallOf(
      yearOf(system({ panels: [strong], lithium: 40, loads: `[{ name: all, power: 40 W, hours: 6, at: ${at} }]` }))!,
    )!.unserved
  expect(lacking('evening') / lacking('day')).toBeGreaterThan(1.5)
})
