import { expect, test } from 'vitest'
import { shortfallOf, yearOf } from '../../server/src/review/year.ts'
import { coldestBattery } from '../../server/src/review/frost.ts'
import { north, strong, system } from './cases.ts'

const panels = [strong, strong, strong, strong]
const loads = '[{ name: all, power: 8 W, hours: 24 }]'
const lacking = (battery: string, lithium = 300) => {
  const { unserved, load } = shortfallOf(yearOf(system({ climate: north, panels, battery, loads, lithium }))!)!
  return unserved / load
}

/**
 * Own calculation of the share that goes unmet, from the climate alone: in months whose days do not reach 0 °C nothing is charged, and the battery carries the load for so many of them as its usable energy lasts; what the sun meets by the way is
 * the daylight part of the load.
 */
function byHand() {
  const high = [-6, -5, 0, 5, 12, 17, 20, 18, 12, 5, -1, -4]
  let frozen = 0
  let dark = 0
  high.forEach((most, month) => {
    // half the time between sunrise and sunset [h], by the declination of the month's middle at 62° north
    const declination = 23.45 * Math.sin((2 * Math.PI * (284 + 30.4 * month + 15)) / 365)
    const cosine = -Math.tan((62 * Math.PI) / 180) * Math.tan((declination * Math.PI) / 180)
    const half = (Math.acos(Math.max(-1, Math.min(1, cosine))) * 12) / Math.PI
    // March just reaches 0 °C in its afternoons, and an hour or two of its sun are a day's load
    if (most >= 0) return
    frozen += 30.4
    dark += 30.4 * (1 - (2 * half) / 24)
  })
  const carried = (0.8 * 12.8 * 300) / (8 * 24)
  return (dark * (1 - carried / frozen)) / 365
}

test('62° north a battery in the open is not charged in the frost, as by hand, and one kept warm is', () => {
  const outside = lacking('place: outside')
  expect(byHand()).toBeCloseTo(0.213, 3)
  expect(Math.abs(outside - byHand())).toBeLessThan(0.02)
  expect(lacking('place: inside\n  kept_above: 5 °C')).toBeLessThan(outside / 2)
})

test('a heater charges in the frost, at a cost', () => {
  const heated = lacking('charge_protection: heated')
  expect(heated).toBeLessThan(0.8 * lacking('charge_protection: cutoff'))
  const { hours } = yearOf(system({ climate: north, panels, loads, battery: 'charge_protection: heated' }))!
  const heat = hours!.heat.reduce((sum, wh) => sum + wh, 0) / 1000
  // on some 140 days up to what the winter sun leaves, a few tenths of a kWh: own estimate
  expect(heat).toBeGreaterThan(4)
  expect(heat).toBeLessThan(100)
})

test('the newer field wins over the older flag, which means a cut-off', () => {
  expect(lacking('low_temperature_cutoff: true')).toBe(lacking('charge_protection: cutoff'))
  expect(lacking('low_temperature_cutoff: true\n  charge_protection: heated')).toBe(
    lacking('charge_protection: heated'),
  )
})

test('no hour in the frost charges the battery, and energy stays in balance', () => {
  const { hours } = yearOf(system({ climate: north, panels, loads, battery: 'place: outside' }))!
  const { produced, load, unserved, curtailed, stored, drawn } = hours!
  const through = produced.map((wh, h) => wh + unserved[h]! + drawn[h]! - load[h]! - curtailed[h]! - stored[h]!)
  expect(Math.max(...through.map(Math.abs))).toBeLessThan(1e-9)
  expect(Math.max(...stored.slice(0, 24 * 59))).toBe(0)
  expect(Math.max(...stored.slice(24 * 150, 24 * 180))).toBeGreaterThan(0)
})

test('what is kept above a temperature is inside, unless the system says that it is outside', () => {
  const coldest = (battery: string) => coldestBattery(system({ battery }))
  expect(coldest('kept_above: 5 °C')).toBe(5)
  expect(coldest('place: outside\n  kept_above: 5 °C')).toBe(-30)
  expect(lacking('kept_above: 5 °C')).toBe(lacking('place: inside\n  kept_above: 5 °C'))
})
