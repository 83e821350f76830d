import { expect, test } from 'vitest'
import { check } from '../check/checked.ts'

const severity = (rule: string, yaml: string, settings?: string) =>
  check(`format: 1\n${yaml}`, settings ? { settings } : {}).findings.find((one) => one.rule === rule)?.severity

// 17 % of a square metre are 170 W
test.each([
  ['10 %', 'error'],
  ['14 %', 'warning'],
  ['17 %', undefined],
  ['21 %', 'information'],
  ['23 %', 'warning'],
  ['30 %', 'error'],
  ['200 %', 'error'],
])('%s printed for 17 % is, as a finding, %s', (printed, expected) => {
  const yaml = `stc: { pmax: 170 W, efficiency: ${printed} }\nsize: { length: 1000 mm, width: 1000 mm }\n`
  expect(severity('efficiency-printed', yaml)).toBe(expected)
})

test('a bend of more than 60° is worth information, no more', () => {
  const yaml = 'cells: { technology: mono }\nlimits: { bend: 240 deg }\n'
  expect(severity('bend-limit-high', yaml)).toBe('information')
})

test.each([
  [7.8, 'warning'],
  [9.4, 'information'],
  [9.5, undefined],
])('a series fuse of %d A for Isc 6.31 A is, as a finding, %s', (fuse, expected) => {
  expect(severity('series-fuse-low', `stc: { isc: 6.31 A }\nlimits: { series_fuse: ${fuse} A }\n`)).toBe(expected)
})

// 22.1 V x (1 + 0.29 % x (25 + 10)) is 24.3 V, and 25.6 V at -30 °C
test.each([
  ['-10 °C', undefined],
  ['-30 °C', 'warning'],
])(
  'a limit of 25 V, with the coefficient of the sheet and %s at the site, is, as a finding, %s',
  (coldest, expected) => {
    const yaml =
      'stc: { voc: 22.1 V }\ntemperature_coefficients: { voc: -0.29 %/°C }\nlimits: { system_voltage: 25 V }\n'
    expect(severity('system-voltage-low', yaml, `format: 1\nsite: { coldest: ${coldest} }\n`)).toBe(expected)
  },
)

test('silicon above 29.4 % is an error', () => {
  const yaml = 'cells: { technology: topcon }\nstc: { pmax: 295 W }\nsize: { length: 1000 mm, width: 1000 mm }\n'
  expect(severity('efficiency-impossible', yaml)).toBe('error')
})
