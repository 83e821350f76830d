import { expect, test } from 'vitest'
import { notChecked } from '../../server/src/review/not-checked.ts'
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

// Own calculation: of 60 W for six hours by day the sun feeds 200 W of steep panels' worth directly, so that the battery of 614 Wh
// usable has a dull day more in reserve; in the evening all 360 Wh come out of it, over half of what it holds. What a larger
// battery carries over several days anyway differs less: 1.3 to 1.8 with 100 Ah.
test.each([
  { panels: 2, lithium: 60, watts: 60 },
  { panels: 3, lithium: 100, watts: 80 },
])(
  '$watts W for six hours on $panels x 100 W and $lithium Ah go unmet twice as much in the evening as by day',
  (one) => {
    const { panels, lithium, watts } = one
    const lacking = (at: string) => {
      const loads = `[{ name: all, power: ${watts} W, hours: 6, at: ${at} }]`
      const { unserved, load } = shortfallOf(
        yearOf(system({ panels: Array<string>(panels).fill(strong), lithium, loads }))!,
      )!
      return unserved / load
    }
    const [day, evening] = [lacking('day'), lacking('evening')]
    expect(day).toBeGreaterThan(0.01)
    expect(day).toBeLessThan(0.05)
    expect(evening / day).toBeGreaterThan(1.9)
    expect(evening / day).toBeLessThan(2.6)
  },
)

test('loads without a time are named among what is not checked, those with one or on all day are not', () => {
  const loads =
    '[{ name: lamp, power: 9 W, hours: 4 }, { name: pump, power: 9 W, hours: 1 }, { name: tv, power: 9 W, hours: 2, at: evening }, { name: fridge, power: 9 W, hours: 24 }]'
  const named = (list: string) =>
    notChecked(system({ loads: list })).filter((line) => line.startsWith('When on the day'))
  expect(named(loads)).toEqual([
    'When on the day lamp and pump run: not given; spread over all of it, and more goes unmet where loads run in the evening.',
  ])
  expect(named('[{ name: tv, power: 9 W, hours: 2, at: 18..24 h }]')).toEqual([])
})
