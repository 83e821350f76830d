// What lies just beside a pattern or a limit of the reader.
import { expect, test } from 'vitest'
import { gaugeNumber } from '../../server/src/quantities/gauge.ts'
import { disambiguated, scanNumber } from '../../server/src/quantities/number.ts'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

test.each([
  ['mm', 1190],
  ['W', 1190],
  ['Wh', 1190],
  ['g', 1190],
  ['mAh', 1190],
  ['m', 1.19],
  ['kg', 1.19],
  ['in', 1.19],
  ['ft', 1.19],
  ['lb', 1.19],
])('1,190 %s is %s', (unit, value) => {
  const number = scanNumber('1,190', 0, false)!
  expect(number.ambiguous).toBe(true)
  expect(disambiguated(number, unit).value).toBe(value)
  expect(disambiguated(number, unit).ambiguous).toBeUndefined()
})

test('of a voltage it stays open what 1,190 is', () => {
  expect(disambiguated(scanNumber('1,190', 0, false)!, 'V').ambiguous).toBe(true)
})

// American wire gauge, ASTM B258 (from memory): 4/0 is gauge -3, 40 is the thinnest
test.each([
  ['4/0', -3],
  ['1/0', 0],
  ['0000', -3],
  ['10', 10],
  ['40', 40],
  ['41', NaN],
  ['5/0', NaN],
  ['1/05', NaN],
  ['1.5', NaN],
])('gauge %s is %s', (size, gauge) => {
  expect(gaugeNumber(size)).toBe(gauge)
})

test.each<[typed: string, kind: QuantityKind, unit: string]>([
  ['2/0', 'area', 'AWG'],
  [' 4/0 ', 'area', 'AWG'],
  ['AWG 10', 'area', 'AWG'],
  ['# 10 AWG', 'area', 'AWG'],
  ['#10 gauge.', 'area', 'AWG'],
  ['-40 ° C to 85 ° C', 'temperature-range', '°C'],
  ['-40 deg C to 85 deg C', 'temperature-range', '°C'],
  ['-40..85 °C', 'temperature-range', '°C'],
])('%s is a %s', (typed, kind, unit) => {
  const { quantity, problem } = readQuantity(typed, kind)
  expect(problem).toBeUndefined()
  expect(quantity!.unit.replace('degC', '°C')).toBe(unit)
})

test('two ends side by side are offered as a range', () => {
  const fixes = (typed: string) => readQuantity(typed, 'temperature-range').problem?.fixes.map(({ text }) => text)
  expect(fixes('-40 °C 85 °C')).toEqual(['-40 to 85 °C'])
  expect(fixes('-40 °C')).toEqual([])
})

test('a text of 200 characters is read, a longer one is not', () => {
  const padded = (length: number) => readQuantity('110 W'.padEnd(length), 'power')
  expect(padded(200).quantity?.value).toBe(110)
  expect(padded(201).problem).toBeDefined()
})

test.each([
  ['±3 %', -0.03, 0.03],
  ['0/+5 %', 0, 0.05],
  ['+5/-0 %', 0, 0.05],
])('a tolerance of %s', (typed, low, high) => {
  const { quantity } = readQuantity(typed, 'tolerance')
  expect(quantity!.value).toBeCloseTo(low, 9)
  expect(quantity!.upper).toBeCloseTo(high, 9)
})
