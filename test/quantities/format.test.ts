import { describe, expect, test } from 'vitest'
import {
  alternatives,
  formatIn,
  formatNumber,
  formatQuantity,
  fromBase,
  toBase,
  unitsFor,
} from '../../server/src/quantities/format.ts'
import { kinds } from '../../server/src/quantities/kinds.ts'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

test.each<[number, number, string]>([
  [110, 4, '110'],
  [0.64260001, 4, '0.6426'],
  [31536000, 4, '31536000'],
  [-0.00012345, 3, '-0.000123'],
  [0.0000001, 3, '0.0000001'],
  [9.9996, 4, '10'],
  [0, 4, '0'],
  [-0, 4, '0'],
  [-1e-15, 4, '-1.000e-15'],
  [NaN, 4, 'not a number'],
])('formatNumber(%d, %d) is %s', (value, significant, text) => expect(formatNumber(value, significant)).toBe(text))

test.each<[number, string, string]>([
  [110, 'W', '110 W'],
  [0.17119, '1', '17.12 %'],
  [-0.0038, '1/K', '-0.38 %/K'],
  [60.123, 'degC', '60.12 °C'],
  [171.23, 'W/m2', '171.2 W/m2'],
  [2.6273, 'USD/W', '2.63 USD/W'],
  [2.6, 'USD/W', '2.60 USD/W'],
  [289, 'USD', '289 USD'],
  [0.04123, 'EUR/kWh', '0.04123 EUR/kWh'],
  [22.1, 'V', '22.1 V'],
])('formatIn(%d, %s) is %s', (value, unit, text) => expect(formatIn(value, unit)).toBe(text))

test.each<[number, Parameters<typeof formatQuantity>[1], string | undefined, string]>([
  [1.19, 'length', undefined, '1190 mm'],
  [12, 'length', undefined, '12 m'],
  [1.19, 'length', 'in', '46.85 in'],
  [6e-6, 'area', undefined, '6 mm2'],
  [toBase(10, 'AWG'), 'area', 'AWG', '10 AWG'],
  [toBase(-1, 'AWG'), 'area', 'AWG', '2/0 AWG'],
  [157680000, 'duration', undefined, '5 years'],
  [172800, 'duration', undefined, '2 days'],
  [45, 'duration', undefined, '45 s'],
  [46, 'temperature', '°F', '114.8 °F'],
  [-0.064, 'voltage-per-kelvin', 'mV/K', '-64 mV/K'],
  [0.012, 'resistance', undefined, '12 mohm'],
  [289, 'money', 'USD', '289 USD'],
])('formatQuantity(%d, %s, %s) is %s', (value, dimension, unit, text) => {
  expect(formatQuantity(value, dimension, unit)).toBe(text)
})

describe('alternatives keep the digits that were printed', () => {
  test.each<[string, QuantityKind, string[]]>([
    ['110 W', 'power', ['0.110 kW']],
    ['1190 mm', 'length', ['119.0 cm', '1.190 m', '46.85 in', '3.904 ft']],
    ['46 7/8 in', 'length', ['1191 mm', '119.1 cm', '1.191 m', '3.91 ft']],
    ['4.8 lb', 'mass', ['2.18 kg', '2177 g', '77 oz']],
    ['-0.38 %/°C', 'power-coefficient', ['-0.0038 1/K', '-3800 ppm/K', '-0.211 %/°F']],
    ['-64 mV/K', 'voltage-coefficient', []],
    ['-0.8 V/K', 'voltage-coefficient', ['-800 mV/°C']],
    ['46 °C', 'temperature', ['115 °F', '319 K']],
    ['-40..85 °C', 'temperature-range', ['-40..185 °F', '233..358 K']],
    ['10 AWG', 'area', ['5.261 mm2']],
    ['6 mm2', 'area', []],
    ['289 USD', 'money', []],
    ['0/+5 %', 'tolerance', []],
  ])('%s', (text, kind, expected) => {
    const { quantity } = readQuantity(text, kind)
    expect(alternatives(quantity!).map((a) => a.text)).toEqual(expected)
  })
})

test('every usual unit of a kind reads back as itself', () => {
  for (const kind of Object.keys(kinds) as QuantityKind[]) {
    const number = kind === 'temperature-range' ? '-4..8' : kind === 'tolerance' ? '0/+5' : '4'
    for (const unit of unitsFor(kind)) {
      expect(readQuantity(`${number} ${unit}`, kind)).toMatchObject({ quantity: { unit }, notes: [] })
    }
  }
})

test('units in datasheet order', () => {
  expect(unitsFor('voltage-coefficient')).toEqual(expect.arrayContaining(['%/°C', '%/K', 'mV/K']))
  expect(unitsFor('length')[0]).toBe('mm')
  expect(unitsFor('money').slice(0, 3)).toEqual(['USD', 'EUR', 'GBP'])
  expect(unitsFor('power')).toEqual(['W', 'kW', 'mW'])
})

test('conversion there and back', () => {
  for (const unit of [
    'mW',
    'in',
    'lb',
    '%',
    '°F',
    'K',
    '%/°F',
    'mV/K',
    'years',
    'rad',
    'MJ/m2',
    'mohm',
    'USD',
    'kcmil',
  ]) {
    expect(fromBase(toBase(7.25, unit), unit)).toBeCloseTo(7.25, 9)
  }
  expect(() => toBase(1, 'furlong')).toThrow('furlong')
})
