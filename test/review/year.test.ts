import { expect, test } from 'vitest'
import { monthDays } from '../../server/src/physics/sun.ts'
import type { ResolvedSystem } from '../../server/src/review/resolved.ts'
import { yearOf } from '../../server/src/review/year.ts'
import { example, lead } from './example.ts'

const loads = [5, 20, 35, 60]
const sum = (list: Float64Array) => list.reduce((a, b) => a + b, 0)

test.each(loads)('with %i W all day, energy in is energy out and what stayed, to 1e-9', (load) => {
  const { produced, load: taken, soc, unserved, curtailed, stored, drawn } = yearOf(example({ load }))!.hours!
  const through = sum(produced) + sum(unserved) + sum(drawn) - sum(taken) - sum(curtailed) - sum(stored)
  expect(Math.abs(through) / sum(produced)).toBeLessThan(1e-9)
  const oneWay = Math.sqrt(0.95)
  const first = soc[0]! - (stored[0]! * oneWay - drawn[0]! / oneWay) / 1280
  const kept = 1280 * (soc.at(-1)! - first)
  expect(Math.abs(sum(stored) * oneWay - sum(drawn) / oneWay - kept) / sum(produced)).toBeLessThan(1e-9)
  expect(soc.every((s) => 0.2 - 1e-12 <= s && s <= 1)).toBe(true)
})

/**
 * The same year calculated another way: energy in watt-seconds above the floor, minute by minute, with one clamp instead of cases.
 * It gets only what the arrays give and the loads take.
 */
function byTheMinute(produced: Float64Array, load: Float64Array, capacity: number, depth: number, roundTrip: number) {
  const oneWay = Math.sqrt(roundTrip)
  const full = capacity * depth * 3600
  const unserved = new Float64Array(produced.length)
  const low = new Float64Array(produced.length)
  let inside = full
  for (let year = 0; year < 2; year++)
    produced.forEach((watts, h) => {
      unserved[h] = 0
      for (let minute = 0; minute < 60; minute++) {
        const net = (watts - load[h]!) * 60
        const wanted = inside + Math.max(net, 0) * oneWay + Math.min(net, 0) / oneWay
        inside = Math.min(full, Math.max(0, wanted))
        unserved[h] += (Math.max(0, -wanted) * oneWay) / 3600
      }
      low[h] = 1 - depth + inside / 3600 / capacity
    })
  return { unserved, low }
}

test.each(loads)('with %i W all day, another formulation of the battery gives the same year', (load) => {
  const { months, hours } = yearOf(example({ load }))!
  const other = byTheMinute(hours!.produced, hours!.load, 1280, 0.8, 0.95)
  let from = 0
  for (const { month, lowest_soc: soc, unserved_wh_day: lacking } of months) {
    const to = from + 24 * monthDays[month - 1]!
    const low = Math.min(...other.low.slice(from, to))
    const unserved = other.unserved.slice(from, to).reduce((a, b) => a + b, 0) / monthDays[month - 1]!
    expect(soc).toBeCloseTo(low, 9)
    expect(lacking).toBeCloseTo(unserved, 6)
    from = to
  }
})

/**
 * Lead-acid calculated another way: ampere-hours missing, in steps of ten seconds, with the charge held to what the battery takes.
 */
function leadBySteps(produced: Float64Array, load: Float64Array) {
  const steps = 360
  const [capacity, oneWay, mostIn] = [2400, Math.sqrt(0.8), 40 * 14.6]
  const missing = new Float64Array(produced.length)
  let served = 0
  let lacking = 0
  for (let year = 0; year < 2; year++) {
    served = 0
    produced.forEach((watts, h) => {
      for (let step = 0; step < steps; step++) {
        const net = watts - load[h]!
        const drawn = net < 0 ? Math.min(-net, (capacity / 2 - lacking) * steps * oneWay) : 0
        const charged = net > 0 ? Math.min(Math.min(net, mostIn) * oneWay, lacking) : 0
        lacking += (drawn / oneWay - charged) / steps
        served += (net < 0 ? load[h]! + net + drawn : load[h]!) / steps
      }
      missing[h] = lacking
    })
  }
  return { missing, served }
}

test.each(loads)(
  'with %i W all day, lead-acid calculated another way gives the same year within a thousandth, and no energy is lost',
  (load) => {
    const { hours } = yearOf(example({ load, battery: lead }))!
    const { produced, load: taken, soc, unserved, curtailed, stored, drawn } = hours!
    const through = sum(produced) + sum(unserved) + sum(drawn) - sum(taken) - sum(curtailed) - sum(stored)
    expect(Math.abs(through) / sum(produced)).toBeLessThan(1e-9)
    const other = leadBySteps(produced, taken)
    soc.forEach((s, h) => expect(Math.abs(s - (1 - other.missing[h]! / 2400))).toBeLessThan(1e-3))
    expect((sum(taken) - sum(unserved)) / other.served).toBeCloseTo(1, 3)
  },
)

test('lead-acid that takes less near full is filled less often than a battery that takes all', () => {
  const full = (battery: string) => yearOf(example({ load: 20, battery }))!.hours!.soc.filter((s) => s > 0.995).length
  expect(full(lead)).toBeLessThan(0.9 * full(lead.replace('flooded', 'lifepo4')))
})

test('what a source gives in a short time the battery takes no faster than it may', () => {
  // the same one year for all
  const one = (system: ResolvedSystem) => yearOf({ ...system, years: 1 })!
  const generator = (power: number, hours: number) =>
    one(example({ load: 60, battery: lead, other: `[{ name: generator, power: ${power} W, hours: ${hours} h }]` }))
  const slow = generator(50, 24)
  const fast = generator(1200, 1)
  const half = generator(400, 2.5)
  expect(sum(fast.hours!.produced)).toBeCloseTo(sum(slow.hours!.produced), 3)
  expect(sum(half.hours!.produced) - sum(slow.hours!.produced)).toBeCloseTo(365 * -200, 3)
  expect(sum(fast.hours!.curtailed)).toBeGreaterThan(sum(slow.hours!.curtailed) + 10_000)
  const without = one(example({ load: 60, battery: lead })).hours!.produced
  const given = [...half.hours!.produced.slice(0, 24)].map((wh, h) => Math.round(wh - without[h]!))
  expect(given.slice(7, 12)).toEqual([0, 400, 400, 200, 0])
})

test('dull days come in runs, so a month that balances on average still falls low', () => {
  const june = yearOf(example({ load: 40 }))!.months[5]!
  expect(june.yield_wh_day).toBeGreaterThan(june.load_wh_day)
  expect(june.lowest_soc).toBeLessThan(0.75)
})
