import { expect, test } from 'vitest'
import { createLibrary } from '../../server/src/library/create.ts'
import { checkFile } from '../../server/src/check/check.ts'
import { isKept, marginsOf } from '../../server/src/review/margins.ts'
import { figuresOf } from '../../server/src/review/figures-of.ts'
import { limitsTable } from '../../server/src/report/page/limits-table.ts'
import { writtenIn } from '../../server/src/report/units.ts'
import { example } from './example.ts'
import { sayIn } from '../../server/src/wording/phrase.ts'

const panel =
  '{ cells: { technology: mono }, stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }, temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C, isc: 0.05 %/°C }, noct: { temperature: 46 °C }, limits: { operating_temperature: -40..UPPER °C } }'

function severity(rule: string, { kind = 'boat', series = 1, parallel = 1, limit = 20, upper = 85 }) {
  const library = createLibrary()
  library.put(
    'example.system.yaml',
    `format: 1
kind: ${kind}
site: { coldest: -10 °C, hottest: 35 °C }
surfaces: [{ id: deck, size: { length: 3 m, width: 1.5 m }, mounting: bonded }]
arrays:
  - panels: [{ panel: ${panel.replace('UPPER', String(upper))}, count: ${series * parallel}, surface: deck }]
    wiring: { in_series: ${series}, in_parallel: ${parallel} }
    controller: { type: mppt, input: { max_voltage: 150 V, max_short_circuit_current: ${limit} A }, output: { max_current: 15 A } }
`,
  )
  const { findings } = checkFile(library, 'example.system.yaml', { today: '2026-11-25' })!
  return findings.find((one) => one.rule === rule)?.severity
}

// Isc of two strings is 12.62 A, 1.25 times that 15.8 A
test.each([
  [16, undefined],
  [15, 'warning'],
  [13, 'warning'],
  [12, 'error'],
])('12.6 A of Isc into a controller that takes %d A is, as a finding, %s', (limit, expected) => {
  expect(severity('short-circuit-current-high', { parallel: 2, limit })).toBe(expected)
})

// three in series reach 73 V at -10 °C
test.each([
  ['boat', 'warning'],
  ['vehicle', 'warning'],
  ['cabin', undefined],
])('73 V on a %s is, as a finding, %s', (kind, expected) => {
  expect(severity('touch-voltage-high', { kind, series: 3 })).toBe(expected)
})

// 35 °C + (46 + 18 - 20) K / 800 W/m2 x 1000 W/m2 is 90 °C: Ross 1981, bonded by SAND85-0330
test.each([
  [90, undefined],
  [85, 'information'],
  [84, 'warning'],
])('90 °C in cells that may have %d °C is, as a finding, %s', (upper, expected) => {
  expect(severity('cells-too-hot', { upper })).toBe(expected)
})

test('panels of more power than a controller can use break no limit of safety, and both pages say so', () => {
  const controller = '{ type: mppt, input: { max_power: 200 W }, output: { max_current: 60 A } }'
  const system = example({ count: 2, strings: 1, controller })
  const margins = marginsOf(system, figuresOf(system)).filter(({ unused }) => unused)
  expect(margins.map((margin) => [margin.value, margin.limit, isKept(margin)])).toEqual([[220, 200, false]])
  expect(limitsTable(margins, writtenIn.metric, sayIn(undefined)).rows).toEqual([
    ['main: panels, controller', '220 of 200 W, the rest is not used'],
  ])
})
