// What stands around a number on a sheet, at each of its places and with each of its spaces: what is read, and what is not taken for it.
import { describe, expect, test } from 'vitest'
import { alternatives } from '../../server/src/quantities/format.ts'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

const valueOf = (text: string, kind: QuantityKind) => readQuantity(text, kind, {}).quantity?.value

/** A gauge n is 0.127 mm x 92^((36 - n) / 39) thick, 2/0 is -1, 4/0 is -3 (ASTM B258). */
const area = (n: number) => (Math.PI / 4) * (0.127e-3 * 92 ** ((36 - n) / 39)) ** 2

describe('wire gauges', () => {
  test.each<[string, number]>([
    ...['10 AWG', '10AWG', 'AWG 10', 'AWG10', 'AWG  10', 'AWG # 10', 'AWG #10', 'AWG#10'].map(
      (s) => [s, 10] as [string, number],
    ),
    ...['# 10 AWG', '#10 AWG', '10 ga', '10 ga.', '10 gauge', 'gauge 10', ' 10 awg ', '10  AWG'].map(
      (s) => [s, 10] as [string, number],
    ),
    ['AWG 2/0', -1],
    ['2/0 AWG', -1],
    ['4/0', -3],
    ['1/0', 0],
    ['1 AWG', 1],
    ['40 AWG', 40],
  ])('%s', (text, n) => {
    expect(valueOf(text, 'area')! / area(n)).toBeCloseTo(1, 3)
  })

  test.each(['0 AWG 2', '5/0 AWG', '5/0', 'AWG', '10 AWG 12', 'x10 AWG', '41 AWG', '10 awgs'])('%s is none', (text) => {
    expect(valueOf(text, 'area')).toBeUndefined()
  })
})

describe('a tolerance behind a temperature, which is left out', () => {
  test.each([
    '46 °C ± 2 °C',
    '46 ± 2 °C',
    '46±2°C',
    '46 °C ±2',
    '46 °C (±2 °C)',
    '46 +/- 2 °C',
    '46 °C +/-2 °C',
    '46 ° C ± 2 ° C',
    '46°C ± 2,5°C',
    '46°C(±2°C)',
    '46 ℃ ±2 ℃',
    '46 °C ( ± 2 °C )',
  ])('%s', (text) => {
    expect(valueOf(text, 'temperature')).toBeCloseTo(46, 9)
  })

  test.each([
    ['114.8 °F ± 3.6 °F', 46],
    ['114.8 ± 3.6 °F', 46],
    ['319.15 K ± 2 K', 46],
  ])('%s', (text, celsius) => {
    expect(valueOf(text, 'temperature')).toBeCloseTo(celsius, 6)
  })
})

test.each<[kind: QuantityKind, text: string, value: number]>([
  ['power-coefficient', '-0.38 ± 0.02 %/°C', -0.0038],
  ['power-coefficient', '(-0.38 ± 0.02) %/°C', -0.0038],
  ['power-coefficient', '-0.38±0.02%/°C', -0.0038],
  ['power-coefficient', '-0.38 +/- 0.02 %/K', -0.0038],
  ['current-coefficient', '0.05 ± 0.015 %/K', 0.0005],
  ['current-coefficient', '500 ± 15 ppm/K', 0.0005],
  ['voltage-coefficient', '-64 ± 2 mV/K', -0.064],
])('the spread of a coefficient is left out: %s %s', (kind, text, value) => {
  expect(valueOf(text, kind)).toBeCloseTo(value, 9)
})

test.each([
  ['power-coefficient', '(-0.38 ± 0.02 %/°C'],
  ['power-coefficient', '-0.38 ± 0.02) %/°C'],
] as const)('half a pair of brackets is no pair: %s %s', (kind, text) => {
  const { quantity, notes, problem } = readQuantity(text, kind, {}) as Record<string, unknown>
  expect(problem !== undefined || (notes as unknown[]).length > 0 || quantity === undefined).toBe(true)
})

test.each<[text: string, kind: QuantityKind, texts: readonly string[]]>([
  // to the digits that were typed: 0.1 °C is 0.18 °F; -17.8 °C is -0.04 °F, and a zero has no sign
  ['0 °C', 'temperature', ['32 °F', '273 K']],
  ['-18 °C', 'temperature', ['0 °F', '255 K']],
  ['-17.8 °C', 'temperature', ['0.0 °F', '255.3 K']],
  ['-17.78 °C', 'temperature', ['0.00 °F', '255.37 K']],
  ['46 °C', 'temperature', ['115 °F', '319 K']],
  ['-40..85 °C', 'temperature-range', ['-40..185 °F', '233..358 K']],
  // 1 in is 25.4 mm, 1 lb is 0.45359237 kg
  ['1190 mm', 'length', ['119.0 cm', '1.190 m', '46.85 in', '3.904 ft']],
  ['2.2 kg', 'mass', ['2200 g', '4.9 lb', '78 oz']],
])('%s in other units', (text, kind, texts) => {
  expect(alternatives(readQuantity(text, kind, {}).quantity!).map((one) => one.text)).toEqual(texts)
})
