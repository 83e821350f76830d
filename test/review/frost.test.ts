import { expect, test } from 'vitest'
import { shortfallOf, yearOf } from '../../server/src/review/year.ts'
import { north, strong, system } from './cases.ts'

const panels = [strong, strong, strong, strong]
const loads = '[{ name: all, power: 8 W, hours: 24 }]'
const lacking = (battery: string, lithium = 300) => {
  const { unserved, load } = shortfallOf(yearOf(system({ climate: north, panels, battery, loads, lithium }))!)!
  return unserved / load
}

// Own calculation: from November to February, and for most of March, nothing is charged, about 140 of 365 days. The battery
// carries the load for 0.8 x 12.8 V x 300 Ah / 192 Wh = 16 of them. Of the others the sun meets the load in the 6 to 10 hours
// of daylight that a third of a day has: (140 - 16) x 0.65 / 365 = 22 %.
test('62° north a battery in the open is not charged in the frost, and one kept warm is', () => {
  const outside = lacking('place: outside')
  expect(outside).toBeGreaterThan(0.15)
  expect(outside).toBeLessThan(0.25)
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
