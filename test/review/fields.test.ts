import { expect, test } from 'vitest'
import { mainCurrent } from '../../server/src/review/bank-current.ts'
import { figuresOf } from '../../server/src/review/figures-of.ts'
import { marginsOf } from '../../server/src/review/margins.ts'
import { notChecked } from '../../server/src/review/not-checked.ts'
import { chargeCurrentClipped } from '../../server/src/review/rules/charge-current-clipped.ts'
import { yearOf } from '../../server/src/review/year.ts'
import { strong } from './cases.ts'
import { example } from './example.ts'
import { resolved } from './resolved.ts'

const sum = (list: ArrayLike<number>) => Array.from(list).reduce((a, b) => a + b, 0)

const shared = (most: number, apart: boolean) =>
  resolved(`
kind: boat
site: { climate: { latitude: 43 deg, sun: [1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4], air: { mean_high: [12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12], mean_low: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5] } }, coldest: -5 °C, hottest: 35 °C }
arrays:
  - { id: port, panels: [{ panel: ${strong}, count: 2 }], wiring: { in_series: 1, in_parallel: 2 }, controller: { type: mppt, output: { max_current: ${most} A } } }
  - { id: starboard, panels: [{ panel: ${strong}, count: 2 }], wiring: { in_series: 1, in_parallel: 2 }, ${apart ? `controller: { type: mppt, output: { max_current: ${most} A } }` : 'shares_controller_with: port'} }
battery: { battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 200 Ah }, charge: { max_current: 100 A, voltage: 14.4 V } }, place: inside, kept_above: 10 °C }
loads: [{ name: all, power: 30 W, hours: 24 }]`)

test('arrays on one controller have one limit through the year', () => {
  const most = (one: ReturnType<typeof shared>) => Math.max(...yearOf(one)!.hours!.produced)
  expect(most(shared(10, false))).toBeCloseTo(10 * 14.4, 6)
  expect(most(shared(10, true))).toBeCloseTo(2 * 10 * 14.4, 6)
  // far above what the panels give there is no limit, and it makes no difference
  expect(most(shared(100, false))).toBeCloseTo(most(shared(100, true)), 6)
})

test('a boat that swings at anchor has level panels, whichever way they face', () => {
  const year = (site: string, tilt: number, azimuth = 180) =>
    sum(
      figuresOf(
        resolved(`
kind: boat
site: { ${site} climate: { latitude: 43 deg, sun: [1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4], air: { mean_high: [12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12], mean_low: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5] } } }
surfaces: [{ id: arch, size: { length: 3 m, width: 2 m }, mounting: open rack, tilt: ${tilt} deg, azimuth: ${azimuth} deg }]
arrays: [{ panels: [{ panel: ${strong}, count: 1, surface: arch }], wiring: { in_series: 1, in_parallel: 1 } }]`),
      ).months.map((m) => m.yield_wh_day),
    )
  const level = year('', 0)
  expect(year('swings: true,', 20, 180)).toBe(level)
  expect(year('swings: true,', 20, 0)).toBe(level)
  expect(year('', 20, 180)).toBeGreaterThan(1.05 * level)
  // turned through all directions, a plane of 20 degrees gives what a level one does within a few per cent
  const turned = sum([0, 90, 180, 270].map((azimuth) => year('', 20, azimuth))) / 4
  expect(turned / level).toBeGreaterThan(0.96)
  expect(turned / level).toBeLessThan(1.01)
})

test('wind and water run by day and night, a generator from the morning on', () => {
  const given = (kind: string) => {
    const other = `[{ name: one, kind: ${kind}, power: 60 W, hours: 4 h }]`
    const [own, without] = [example({ other }), example({})].map((one) => yearOf({ ...one, years: 1 })!.hours!.produced)
    return Array.from({ length: 24 }, (_, h) => Math.round(own![h]! - without![h]!))
  }
  expect(given('wind')).toEqual(new Array(24).fill(10))
  expect(given('hydro')).toEqual(new Array(24).fill(10))
  expect(given('shore')).toEqual(Array.from({ length: 24 }, (_, h) => (8 <= h && h < 12 ? 60 : 0)))
})

test('where the current is clipped, finding and simulation divide by the same voltage', () => {
  const one = shared(5, false)
  const [found] = chargeCurrentClipped.check(one, figuresOf(one)) as unknown as {
    with: { hot: { value: number }; current: { value: number } }
  }[]
  const { hot, current } = found!.with
  expect(hot.value / current.value).toBeCloseTo(14.4, 6)
  expect(Math.max(...yearOf(one)!.hours!.produced)).toBeCloseTo(5 * 14.4, 6)
})

const bank = (loads: string, more = '', inverter = '{ efficiency: 80 % }') =>
  resolved(`
battery: { battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 100 Ah } }, in_parallel: 2${more} }
inverter: ${inverter}
loads: ${loads}`)

test('of loads that never run together the one that draws most from the battery counts, losses of the inverter included', () => {
  const one = bank(
    '[{ name: kettle, power: 900 W, hours: 0.1, supply: ac, one_of: galley }, { name: hob, power: 1000 W, hours: 0.1, one_of: galley }]',
  )
  // 900 W / 0.8 / 12.0 V, more than 1000 W / 12.0 V
  expect(mainCurrent(one)!.amps).toBeCloseTo(93.75, 9)
})

test('loads of different months do not run together', () => {
  const one = bank(
    '[{ name: heater, power: 900 W, hours: 1, months: [1] }, { name: fan, power: 600 W, hours: 1, months: [7] }]',
  )
  expect(mainCurrent(one)!.amps).toBeCloseTo(900 / 12, 9)
})

test('fuses and cables of outputs, of each battery, what the fuse breaks and what motors need at the start have a margin', () => {
  const loads = '[{ name: saw, power: 600 W, surge: 1500 W, hours: 0.1, supply: ac }]'
  const own = bank(
    loads,
    ', fuse: 100 A, each_fuse: 50 A, interrupting_rating: 20 kA',
    '{ efficiency: 80 %, power: 700 W, surge: 1400 W }',
  )
  const array = resolved(`
arrays: [{ id: main, panels: [{ panel: ${strong}, count: 2 }], string_fuse: 10 A, wiring: { in_series: 1, in_parallel: 2 }, controller: { type: mppt, output: { max_current: 10 A } }, output: { fuse: 15 A, cable: { size: 4 mm2, length: 1 m, insulation: 90 °C } } }]
battery: { battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 100 Ah } } }`)
  const margins = [own, array].flatMap((one) =>
    marginsOf(one, figuresOf(one)).map(({ what, value, limit }) => [what, value, limit]),
  )
  // 600 W / 0.8 / 12.0 V is 62.5 A, of which each of two carries half, times 1.25
  expect(margins).toContainEqual(['battery: design current, each fuse', 39.0625, 50])
  expect(margins).toContainEqual(['battery: interrupting rating of the fuse', 20_000, 10_000])
  expect(margins).toContainEqual(['inverter: while a motor starts', 1500, 1400])
  expect(margins).toContainEqual(['main: charge design current, output fuse', 12.5, 15])
  expect(margins.map(([what]) => what)).toEqual(
    expect.arrayContaining(['main: output fuse, output cable', 'main: charge design current, output cable']),
  )
})

test('shade on single cells is named where no surface is', () => {
  const one = resolved(
    `arrays: [{ panels: [{ panel: ${strong}, count: 1 }], wiring: { in_series: 1, in_parallel: 1 } }]`,
  )
  expect(notChecked(one).some((line) => line.startsWith('Shade on single cells'))).toBe(true)
})
