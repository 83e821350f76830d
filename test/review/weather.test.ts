import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { reviewOf } from '../../server/src/check/review.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { readTable } from '../published/read-table.ts'
import { inland, strong } from './cases.ts'

const rows = readTable('greensboro-tmy3.csv')
const epw = [
  'LOCATION,Example,-,XYZ,demo,000000,36.1,-79.95,-5,270',
  ...Array<string>(7).fill('HEADER'),
  ...rows.map(
    ({ month, air, global, normal, diffuse }) =>
      `2020,${month},1,1,60,?,${air},0,0,0,0,0,0,${global},${normal},${diffuse}`,
  ),
].join('\n')
const climate = inland
  .slice(1, -1)
  .replace('latitude', '\nlatitude')
  .replace(', sun', '\nsun')
  .replace(/,\s*air/, '\nair')

const library = (text: string | null) => {
  const all = createLibrary()
  all.put('/a/wattproof.yaml', 'format: 1\n')
  all.put('/a/place.climate.yaml', `format: 1\nname: Place\n${climate}\nhourly: place.epw\n`)
  all.put(
    '/a/own.system.yaml',
    `format: 1
site: { climate: place, coldest: -20 °C }
arrays: [{ panels: [{ panel: ${strong}, count: 1 }], wiring: { in_series: 1, in_parallel: 1 }, controller: { type: mppt, output: { max_current: 20 A } } }]
battery: { battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 60 Ah } } }
loads: [{ name: all, power: 9 W, hours: 24 }]
`,
  )
  if (text !== null) all.put('/a/place.epw', text)
  return all
}
const review = (text: string | null) => {
  const all = library(text)
  return reviewOf(all, all.file('/a/own.system.yaml')!)!
}
const reported = (text: string) =>
  checkFile(library(text), '/a/place.climate.yaml', { today: '2026-01-01' })!.findings.map(({ rule, message }) => [
    rule,
    message,
  ])

test('a climate with hours of its own has the sun of its file, month by month', () => {
  const { figures } = review(epw)
  const january =
    rows.filter(({ month }) => month === '1').reduce((sum, { global }) => sum + Number(global), 0) / 31_000
  expect(figures.months[0]!.sun_kwh_m2_day).toBeCloseTo(january, 9)
  expect(figures.year.unserved_wh).toBe(figures.year.unserved_p90_wh)
  expect(figures.months[6]!.yield_wh_day).not.toBe(review(null).figures.months[6]!.yield_wh_day)
})

test('a file that is not there, or none of weather, is reported in its climate, and the means are used', () => {
  expect(reported('')).toContainEqual(['hourly-weather-unreadable', 'place.epw is not there.'])
  expect(reported('a')).toContainEqual([
    'hourly-weather-unreadable',
    'place.epw is no EPW file: its first line does not begin with LOCATION.',
  ])
  expect(reported(epw).map(([rule]) => rule)).not.toContain('hourly-weather-unreadable')
  expect(review('').figures).toEqual({ ...review(null).figures })
})
