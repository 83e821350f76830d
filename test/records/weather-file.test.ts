import { expect, test } from 'vitest'
import { readWeather, weatherNamedIn, weatherPath } from '../../server/src/records/weather-file.ts'

const location = 'LOCATION,Example Bay,-,XYZ,demo,000000,43.50,-1.50,1.0,5.0'
const hour = (month: number, sun = 120) =>
  `2020,${month},1,1,60,?,9.5,5,80,101000,0,0,300,${sun},300,70${',0'.repeat(19)}`
const file = (hours: readonly string[]) => [location, ...Array<string>(7).fill('HEADER'), ...hours, ''].join('\r\n')
const whole = Array.from({ length: 8760 }, (_, h) => hour(1 + Math.floor(h / 730)))

test('place, hours of sun and air are read', () => {
  const year = readWeather(file(whole))
  if (typeof year === 'string') throw new Error(year)
  expect([year.latitude, year.longitude, year.zone]).toEqual([43.5, -1.5, 1])
  expect([year.month.length, year.month[8759], year.global[9], year.normal[9], year.diffuse[9], year.air[9]]).toEqual([
    8760, 11, 120, 300, 70, 9.5,
  ])
})

test.each([
  ['no header', 'a,b\n', 'is no EPW file: its first line does not begin with LOCATION'],
  ['no place', file(whole).replace('43.50', ''), 'names no latitude, longitude and time zone in its first line'],
  ['half a year', file(whole.slice(0, 4380)), 'has 4380 hours, where a year has 8760'],
  ['no sun', file([...whole.slice(0, 10), hour(1, 9999)]), 'has no month, air or sun in line 19 that can be used'],
])('%s is reported in words', (_, text, said) => expect(readWeather(text)).toBe(said))

test.each([
  ['/a/bay.climate.yaml', 'bay.epw', '/a/bay.epw'],
  ['/a/bay.climate.yaml', './hours/bay.epw', '/a/hours/bay.epw'],
  ['/a/bay.climate.yaml', '../bay.epw', null],
  ['/a/bay.climate.yaml', '/etc/bay.epw', null],
  ['/a/bay.climate.yaml', 'https://example.org/bay.epw', null],
  ['/a/bay.climate.yaml', 'bay.txt', null],
])('%s naming %s means %s', (record, name, path) => expect(weatherPath(record, name)).toBe(path))

test('what a text names is found without reading it', () => {
  expect(weatherNamedIn('/a/bay.climate.yaml', 'sun: []\nhourly: bay.epw # measured\n')).toEqual(['/a/bay.epw'])
  expect(weatherNamedIn('/a/bay.climate.json', '{"hourly": "my bay.epw"}')).toEqual(['/a/my bay.epw'])
  expect(weatherNamedIn('/a/tern.panel.yaml', 'hourly: bay.epw')).toEqual([])
})
