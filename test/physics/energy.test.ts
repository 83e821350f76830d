import { describe, expect, test } from 'vitest'
import { diodeAt } from '../../server/src/physics/diode-model.ts'
import { panelEnergy, yearTotal } from '../../server/src/physics/energy.ts'
import { fitDiode } from '../../server/src/physics/fit-diode.ts'
import { linearPowerTable, powerAt, powerTable } from '../../server/src/physics/power-table.ts'
import { maxPower } from '../../server/src/physics/single-diode.ts'
import { meanSunDays, yearSunDays, type SunDay } from '../../server/src/physics/sun-days.ts'
import { sunHours } from '../../server/src/physics/sun-hours.ts'
import { monthDays } from '../../server/src/physics/sun.ts'
import { syntheticSunDays } from '../../server/src/physics/synthetic-days.ts'
import { dayToDay } from './models/day-to-day.ts'

const latitude = 43.5
const sun = [1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4].map((kWh) => kWh * 1000)
const air = {
  high: [12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12],
  low: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5],
}
const fit = fitDiode({
  pmax: 110,
  vmp: 18.6,
  imp: 5.92,
  voc: 22.1,
  isc: 6.31,
  cells: 36,
  alpha: 5e-4,
  beta: -2.9e-3,
  gamma: -3.8e-3,
})
if (!fit.ok) throw new Error(fit.why)
const model = fit.params
const power = powerTable(model)
const flat = { plane: { tilt: 0, azimuth: 180 }, k: 0.055, shading: 0, albedo: 0.1, ar: 0.16 }
const kinds = {
  mean: meanSunDays(latitude, sun),
  year: yearSunDays(latitude, sun),
  synthetic: syntheticSunDays(latitude, sun, 7),
}

describe('power table', () => {
  test('between its points it is within 0.03 % of the rated power of the diode itself', () => {
    let worst = 0
    for (let irradiance = 1; irradiance <= 1500; irradiance += 13) {
      for (let temperature = -49; temperature < 110; temperature += 3.7) {
        const exact = maxPower(diodeAt(model, irradiance, temperature)).p
        worst = Math.max(worst, Math.abs(powerAt(power, irradiance, temperature) - exact) / 110)
      }
    }
    expect(worst).toBeLessThan(3e-4)
  })

  test('at standard test conditions it gives Pmax, and nothing in the dark', () => {
    expect(powerAt(power, 1000, 25)).toBeCloseTo(110, 1)
    expect(powerAt(power, 0, 25)).toBe(0)
    expect(powerAt(linearPowerTable(110, -0.0038), 500, 50)).toBeCloseTo(55 * (1 - 0.095), 3)
  })
})

describe.each(Object.entries(kinds))('%s days', (kind, days) => {
  const hours = sunHours(latitude, days, air)

  test('keep the sun of every month', () => {
    const means = monthDays.map((_, month) =>
      mean(days.filter((day) => day.month === month).map(({ global }) => global)),
    )
    means.forEach((value, month) => expect(value).toBeCloseTo(sun[month]!, 6))
    expect(days).toHaveLength(kind === 'mean' ? 12 : 365)
  })

  test('hours add up to their day, beam and diffuse add up to the hour', () => {
    days.forEach((day, d) => expect(sumOf(hours.global, d)).toBeCloseTo(day.global, 6))
    hours.global.forEach((global, at) => {
      expect(hours.normal[at]! * Math.max(0, hours.up[at]!) + hours.diffuse[at]!).toBeCloseTo(global, 9)
      expect(hours.normal[at]!).toBeLessThanOrEqual(hours.extraterrestrial[at]!)
    })
  })

  test('a level panel sees the horizontal sun, but for the sky around a sun below 5°, whose brightness is limited', () => {
    const energy = panelEnergy(hours, flat, power)
    energy.sun.forEach((value, month) => {
      expect(value / sun[month]!).toBeGreaterThan(0.9975)
      expect(value / sun[month]!).toBeLessThan(1.001)
    })
  })

  test('months are the means of the hours', () => {
    const { hours: watts, months } = panelEnergy(hours, flat, power)
    const july = days.flatMap((day, d) => (day.month === 6 ? [sumOf(watts, d)] : []))
    expect(months[6]).toBeCloseTo(mean(july), 9)
  })
})

test('twelve mean days stand for the year within 1 % a month', () => {
  const of = (days: SunDay[]) => panelEnergy(sunHours(latitude, days, air), flat, power).months
  const [few, all] = [of(kinds.mean), of(kinds.year)]
  few.forEach((value, month) => expect(Math.abs(value / all[month]! - 1)).toBeLessThan(0.01))
})

test('bonded gives less than open rack, shade takes its share, tilt helps in winter', () => {
  const hours = sunHours(latitude, kinds.year, air)
  const months = (change: Partial<typeof flat>) => panelEnergy(hours, { ...flat, ...change }, power).months
  expect(yearTotal(months({}))).toBeLessThan(0.97 * yearTotal(months({ k: 0.0325 })))
  expect(yearTotal(months({ shading: 0.2 })) / yearTotal(months({}))).toBeCloseTo(0.805, 1)
  expect(months({ plane: { tilt: 60, azimuth: 180 } })[11]).toBeGreaterThan(1.5 * months({})[11]!)
})

test('south of the equator the sun stands in the north', () => {
  const hours = sunHours(-35, yearSunDays(-35, [...sun.slice(6), ...sun.slice(0, 6)]), air)
  const facing = (azimuth: number) =>
    yearTotal(panelEnergy(hours, { ...flat, plane: { tilt: 35, azimuth } }, power).months)
  expect(facing(0)).toBeGreaterThan(1.3 * facing(180))
  expect(facing(90) / facing(270)).toBeCloseTo(1, 1)
})

test('beyond the polar circle the winter is dark and nothing is a NaN', () => {
  const polar = [0, 300, 1500, 3500, 5200, 5800, 5300, 3600, 1900, 600, 50, 0]
  for (const days of [meanSunDays(72, polar), yearSunDays(72, polar), syntheticSunDays(72, polar, 1)]) {
    const { months } = panelEnergy(sunHours(72, days, air), flat, power)
    expect(months.every((value) => value >= 0)).toBe(true)
    expect(months[11]).toBe(0)
    expect(months[5]).toBeGreaterThan(400)
  }
})

describe('synthetic days', () => {
  test('the same seed gives the same year, another seed another', () => {
    expect(syntheticSunDays(latitude, sun, 7)).toEqual(kinds.synthetic)
    expect(syntheticSunDays(latitude, sun, 8)).not.toEqual(kinds.synthetic)
  })

  // Weather years of thirteen places (TMY3, IWEC, TMYx and measured ones of Zurich; `npm run years -- FILE.epw...`) have 0.11 to
  // 0.48, 0.26 on average.
  test.each([
    [43.5, sun],
    [48, [1.0, 1.8, 2.9, 4.2, 5.2, 5.5, 5.6, 4.8, 3.5, 2.0, 1.1, 0.8].map((kWh) => kWh * 1000)],
    [35, [2.4, 3.1, 4.2, 5.3, 6.0, 6.4, 6.4, 5.8, 4.8, 3.8, 2.7, 2.2].map((kWh) => kWh * 1000)],
  ])(
    'at %d degrees bad days come in runs: a day predicts the next with a correlation of about a quarter',
    (where, means) => {
      const years = Array.from({ length: 40 }, (_, seed) => dayToDay(syntheticSunDays(where, means, seed), where))
      expect(mean(years)).toBeGreaterThan(0.22)
      expect(mean(years)).toBeLessThan(0.31)
    },
  )

  test('no day is clearer than 0.83, nor below 0, and none has more diffuse than sun', () => {
    const bright = sun.map((x) => 1.25 * x)
    for (const { global, diffuse } of syntheticSunDays(latitude, bright, 3)) {
      expect(global).toBeGreaterThan(0)
      expect(diffuse).toBeLessThanOrEqual(global)
    }
  })
})

const mean = (values: readonly number[]) => values.reduce((sum, x) => sum + x, 0) / values.length
const sumOf = (hours: Float64Array, d: number) => hours.slice(24 * d, 24 * d + 24).reduce((sum, x) => sum + x, 0)
