import { describe, expect, test } from 'vitest'
import { ampacity, airFactor, bundleFactor, metricAmpacity, metricCurrent } from '../../server/src/physics/ampacity.ts'
import { cableDrop, resistancePerMetre } from '../../server/src/physics/cable.ts'
import {
  allFuseSizes,
  designCurrent,
  fuseSizes,
  nextFuse,
  reverseCurrent,
  stringFuseWindow,
} from '../../server/src/physics/fuses.ts'
import { airTemperature } from '../../server/src/physics/air.ts'
import { monthlyWeather } from './models/monthly.ts'

describe('cable', () => {
  test('6 mm2, 8 m one way, 20 A, 70 °C: 63.2 mohm, 1.26 V, 25.3 W', () => {
    const { resistance, voltage, power } = cableDrop(resistancePerMetre(6, 'class 5 plain', 70), 8, 20)
    expect(resistance).toBeCloseTo(0.0632, 4)
    expect(voltage).toBeCloseTo(1.263, 3)
    expect(power).toBeCloseTo(25.3, 1)
  })

  /** The square root is the heat balance; 0.91 for 90 °C insulation at 40 °C stands in NEC table 310.15(B)(1) (from memory). */
  test.each([
    [90, 30, 1],
    [90, 40, 0.91],
    [60, 35, 0.91],
    [90, 90, 0],
    [105, 50, 0.86],
  ])('insulation of %i °C in air of %i °C: factor %f', (insulation, air, factor) => {
    expect(airFactor(insulation, air)).toBeCloseTo(factor, 2)
  })

  test('a fuse of just the current is the next one', () => {
    expect(nextFuse([10, 15, 20], 15)).toBe(15)
    expect(nextFuse([10, 15, 20], 15.1)).toBe(20)
    expect(nextFuse([10, 15, 20], 20.1)).toBeNull()
  })

  test('a size that is in no table lies between its neighbours', () => {
    const of = (area: number) => resistancePerMetre(area, 'class 5 plain', 20)
    expect(of(8)).toBeLessThan(of(6))
    expect(of(8)).toBeGreaterThan(of(10))
  })

  test.each([
    [0.5, 90, null],
    [6, 50, null],
    [6, 60, 40],
    [4, 90, 40],
    [10, 104, 70],
    [16, 105, 120],
    [150, 200, 510],
  ])('%f mm2 with %i °C insulation: %s A', (area, insulation, current) =>
    expect(ampacity(area, insulation)).toBe(current),
  )

  test.each([
    [0.5, 90, null],
    [6, 50, null],
    [6, 60, 29],
    [6, 90, 50],
    [2, 90, 21],
    [10, 104, 70],
    [25, 125, 170],
    [95, 90, 330],
  ])('a metric %f mm2 with %i °C insulation: %s A', (area, insulation, current) =>
    expect(metricAmpacity(area, insulation)).toBe(current),
  )

  /** EN 50618, single cable free in air of 60 °C, conductor at 120 °C (as quoted in an open code). */
  test.each([
    [1.5, 30],
    [2.5, 41],
    [4, 55],
    [6, 70],
    [10, 98],
    [16, 132],
    [25, 176],
    [35, 218],
    [50, 276],
  ])('solar cable of %f mm2 in air of 60 °C is credited with no more than its standard’s %i A', (area, most) => {
    expect(metricAmpacity(area, 120)! * airFactor(120, 60)).toBeLessThan(most)
  })

  test('a thicker metric conductor or a better insulation never carries less', () => {
    const areas = [...metricCurrent.map(([area]) => area), 95, 120]
    const at = (area: number, rating: number) => metricAmpacity(area, rating)!
    for (const rating of [60, 70, 85, 90, 105, 125])
      areas.slice(1).forEach((area, i) => expect(at(area, rating)).toBeGreaterThanOrEqual(at(areas[i]!, rating)))
    for (const area of areas)
      [70, 85, 105, 125].forEach((rating, i) =>
        expect(at(area, rating)).toBeGreaterThanOrEqual(at(area, [60, 70, 85, 105][i]!)),
      )
  })

  test('hot air and neighbours take from it', () => {
    expect(airFactor(90, 20)).toBe(1)
    expect(airFactor(60, 70)).toBe(0)
    expect([2, 3, 6, 7, 25].map(bundleFactor)).toEqual([1, 0.7, 0.6, 0.5, 0.4])
  })
})

describe('fuses', () => {
  test('Isc 6.31 A, series fuse 15 A: 10, 12 or 15 A fit', () => {
    const { low, high } = stringFuseWindow(6.31, 15)
    expect(fuseSizes.string.filter((size) => low <= size && size <= high)).toEqual([10, 12, 15])
    expect(nextFuse(fuseSizes.string, designCurrent(designCurrent(6.31)))).toBe(10)
  })

  test('two strings need none, three do', () => {
    expect(reverseCurrent(2, 6.31)).toBeLessThan(15)
    expect(reverseCurrent(3, 6.31)).toBeGreaterThan(15)
  })

  test('no larger size than the largest', () => expect(nextFuse(fuseSizes.vehicle, 501)).toBeNull())

  test('all sizes rise', () =>
    expect(allFuseSizes.every((size, k) => k === 0 || size > allFuseSizes[k - 1]!)).toBe(true))
})

describe('weather', () => {
  test('the air is coldest about sunrise, warmest in the afternoon, and means what it should', () => {
    const day = Array.from({ length: 24 }, (_, h) => airTemperature(h + 0.5, 25, 15))
    expect(day.indexOf(Math.max(...day))).toBe(15)
    expect(day.indexOf(Math.min(...day))).toBeGreaterThanOrEqual(4)
    expect(day.indexOf(Math.min(...day))).toBeLessThanOrEqual(6)
    expect(Math.max(...day) - Math.min(...day)).toBeCloseTo(10, 0)
    expect(day.reduce((sum, x) => sum + x, 0) / 24).toBeCloseTo(20, 1)
  })

  test('months of hourly weather', () => {
    const month = [...new Array<number>(48).fill(0), ...new Array<number>(24).fill(1), 2]
    const global = month.map((_, h) => (h % 24 === 12 ? 1000 + h : 0))
    const temperature = month.map((_, h) => h)
    const { sun, air, coldest, hottest } = monthlyWeather({ month, global, air: temperature })
    expect(sun.slice(0, 2)).toEqual([1000 + 24, 1060])
    expect([air.high[0], air.low[0], air.high[1], coldest, hottest]).toEqual([35, 12, 71, 0, 71])
    expect(sun[2]).toBeNaN()
  })
})
