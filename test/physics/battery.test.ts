import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { runStore, runTwice, storeHour, taken } from '../../server/src/physics/battery.ts'
import { globalShare } from '../../server/src/physics/diffuse.ts'
import { sunsetHourAngle } from '../../server/src/physics/sun.ts'
import { cooperDeclination } from './models/cooper-declination.ts'

const store = {
  capacity: 1280,
  floor: 0.2,
  chargeEfficiency: 0.97,
  dischargeEfficiency: 0.97,
  mostIn: Infinity,
  mostOut: Infinity,
  acceptance: Infinity,
}

describe('one day worked by hand: 43° north, 15 May, 5 kWh/m2, 220 W at 0.75 in all, 920 Wh of load', () => {
  const sunset = sunsetHourAngle(43, cooperDeclination(135))
  const produced = Array.from({ length: 24 }, (_, h) => 5 * 220 * 0.75 * globalShare(15 * (h + 0.5 - 12), sunset))
  const load = produced.map((_, h) => 30 + (18 <= h && h < 23 ? 40 : 0))

  test('starting at 0.60 it goes down to 0.459, up to 0.804 and ends at 0.502', () => {
    const { soc, unserved, curtailed } = runStore(store, 0.6, produced, load)
    expect(Math.min(...soc)).toBeCloseTo(0.4594, 4)
    expect(Math.max(...soc)).toBeCloseTo(0.8038, 4)
    expect(soc[23]).toBeCloseTo(0.5021, 4)
    expect(Math.max(...unserved, ...curtailed)).toBe(0)
  })

  test('with a quarter of the sun for three days it ends at the floor and leaves 1644 Wh unserved in 52 hours', () => {
    const days = [...produced, ...produced, ...produced].map((wh) => wh / 4)
    const { soc, unserved } = runStore(store, 0.6, days, [...load, ...load, ...load])
    expect(soc[71]).toBeCloseTo(0.2, 9)
    expect(unserved.reduce((sum, wh) => sum + wh, 0)).toBeCloseTo(1644.4, 1)
    expect(unserved.filter((wh) => wh > 0)).toHaveLength(52)
  })
})

test('every hour balances to the last digit that counts, and stays between floor and full', () => {
  const amount = fc.double({ min: 0, max: 3000, noNaN: true })
  const part = fc.double({ min: 0.5, max: 1, noNaN: true })
  const stores = fc.record({
    capacity: fc.double({ min: 10, max: 1e5, noNaN: true }),
    floor: fc.double({ min: 0, max: 0.5, noNaN: true }),
    chargeEfficiency: part,
    dischargeEfficiency: part,
    mostIn: amount,
    mostOut: amount,
    acceptance: fc.constantFrom(0.2, 1, 5, Infinity),
  })
  const run = fc.property(stores, part, amount, amount, (s, soc, produced, load) => {
    const hour = storeHour(s, soc, produced, load)
    const balance = produced + hour.unserved + hour.drawn - load - hour.curtailed - hour.stored
    const change = (hour.soc - soc) * s.capacity - hour.stored * s.chargeEfficiency + hour.drawn / s.dischargeEfficiency
    const parts = [hour.stored, hour.drawn, hour.unserved, hour.curtailed]
    return (
      Math.abs(balance) < 1e-9 &&
      Math.abs(change) < 1e-9 * s.capacity &&
      parts.every((x) => x >= 0) &&
      Math.min(hour.stored, hour.drawn) === 0 &&
      s.floor <= hour.soc &&
      hour.soc <= 1
    )
  })
  fc.assert(run, { numRuns: 3000 })
})

test.each([Infinity, 1])(
  'run twice it is as if run again from where it ended, at an acceptance of %d',
  (acceptance) => {
    const produced = Array.from({ length: 240 }, (_, h) => (8 <= h % 24 && h % 24 < 16 ? 40 + h : 0))
    const load = produced.map((_, h) => (h < 200 ? 40 : 70))
    const s = { ...store, acceptance }
    const end = runStore(s, 1, produced, load).soc[239]!
    expect(end).toBeLessThan(0.9)
    expect(runTwice(s, 1, produced, load)).toEqual(runStore(s, end, produced, load))
  },
)

test('a battery already below its floor gives nothing and is not lifted', () => {
  expect(storeHour(store, 0.1, 0, 50)).toEqual({ soc: 0.1, stored: 0, drawn: 0, unserved: 50, curtailed: 0 })
})

describe('charge that is taken in an hour', () => {
  /** Second by second, by the rule itself. */
  const bySteps = (acceptance: number, missing: number, offered: number) => {
    let left = missing
    for (let s = 0; s < 3600; s++) left -= Math.min(offered, acceptance * left) / 3600
    return missing - left
  }

  test.each([
    { missing: 500, offered: 200, why: 'all of it, far from full' },
    { missing: 100, offered: 200, why: 'falling away from the first minute' },
    { missing: 300, offered: 200, why: 'steady at first, then falling' },
    { missing: 0, offered: 200, why: 'nothing, when full' },
  ])('$missing Wh missing, $offered Wh offered: $why', ({ missing, offered }) => {
    expect(Math.abs(taken(1, missing, offered) - bySteps(1, missing, offered))).toBeLessThan(0.02)
  })

  test('a battery that takes all until it is full is the end of that rule', () => {
    expect([taken(Infinity, 300, 200), taken(Infinity, 100, 200), taken(Infinity, 0, 0)]).toEqual([200, 100, 0])
    expect(taken(1e6, 100, 200)).toBeCloseTo(100, 3)
  })

  test('four fifths full at a fifth of the capacity an hour is where the current of lead-acid begins to fall', () => {
    expect(taken(1, 21, 20)).toBeLessThan(20)
    expect(taken(1, 40, 20)).toBe(20)
  })
})
