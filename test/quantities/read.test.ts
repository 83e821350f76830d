import { describe, expect, test } from 'vitest'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import type { ReadOptions } from '../../server/src/quantities/read.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

type Case = [text: string, value: number, unit: string, half?: number]

/** What is read without a word: every row reads with no problem and no remark. */
const silent: Partial<Record<QuantityKind, { options?: ReadOptions; cases: Case[] }>> = {
  power: {
    options: { unit: 'W' },
    cases: [
      ['110 W', 110, 'W', 0.5],
      ['110W', 110, 'W', 0.5],
      ['110 Wp', 110, 'W', 0.5],
      ['110 watts', 110, 'W', 0.5],
      ['110 Watt', 110, 'W'],
      ['0.11 kW', 110, 'kW', 5],
      ['250 mW', 0.25, 'mW', 0.0005],
      ['110', 110, 'W', 0.5],
      ['110.0', 110, 'W', 0.05],
      ['+5 W', 5, 'W', 0.5],
      ['1,190.5 W', 1190.5, 'W', 0.05],
      ['1 190 W', 1190, 'W', 0.5],
      ['110 W', 110, 'W', 0.5], // no-break space
      ['1 190 W', 1190, 'W', 0.5], // thin spaces
      ['110 W.', 110, 'W', 0.5],
      ['.5 W', 0.5, 'W', 0.05],
    ],
  },
  voltage: {
    options: { unit: 'V' },
    cases: [
      ['18.6 V', 18.6, 'V', 0.05],
      ['18.60 V', 18.6, 'V', 0.005],
      ['18.6 Vdc', 18.6, 'V', 0.05],
      ['18.6VDC', 18.6, 'V', 0.05],
      ['560 mV', 0.56, 'mV', 0.0005],
      ['1 kV', 1000, 'kV', 500],
    ],
  },
  current: {
    cases: [
      ['5.92 A', 5.92, 'A', 0.005],
      ['5.92 Adc', 5.92, 'A', 0.005],
      ['20 mA', 0.02, 'mA', 0.0005],
      ['5.92 amps', 5.92, 'A', 0.005],
    ],
  },
  length: {
    options: { unit: 'mm' },
    cases: [
      ['1190 mm', 1.19, 'mm', 0.0005],
      ['1190', 1.19, 'mm', 0.0005],
      ['119 cm', 1.19, 'cm', 0.005],
      ['1.19 m', 1.19, 'm', 0.005],
      ["1'190 mm", 1.19, 'mm', 0.0005],
      ['46.9 in', 1.19126, 'in', 0.00127],
      ['46.9 in.', 1.19126, 'in', 0.00127],
      ['46.9"', 1.19126, 'in', 0.00127],
      ['46.9″', 1.19126, 'in', 0.00127],
      ['46 7/8 in', 1.190625, 'in', 0.0015875],
      ['46-7/8 in', 1.190625, 'in', 0.0015875],
      ['46⅞ in', 1.190625, 'in', 0.0015875],
      ['46 7⁄8 in', 1.190625, 'in', 0.0015875],
      ['1/4 in', 0.00635, 'in', 0.003175],
      ['3.9 ft', 1.18872, 'ft', 0.01524],
      [`5' 3"`, 1.6002, 'in', 0.0127],
      ['5’3½”', 1.6129, 'in', 0.00635],
      ['5 ft 3 in', 1.6002, 'in', 0.0127],
      ['2.5 MM', 0.0025, 'mm', 0.00005],
    ],
  },
  area: {
    options: { unit: 'mm2' },
    cases: [
      ['6 mm2', 6e-6, 'mm2', 5e-7],
      ['6 mm²', 6e-6, 'mm2', 5e-7],
      ['6 mm^2', 6e-6, 'mm2', 5e-7],
      ['0.64 m2', 0.64, 'm2', 0.005],
      ['10 AWG', 5.2612e-6, 'AWG', 0],
      ['AWG 10', 5.2612e-6, 'AWG', 0],
      ['#10 AWG', 5.2612e-6, 'AWG', 0],
      ['2/0 AWG', 67.431e-6, 'AWG', 0],
      ['00 AWG', 67.431e-6, 'AWG', 0],
      ['250 kcmil', 126.677e-6, 'kcmil'],
    ],
  },
  mass: {
    options: { unit: 'kg' },
    cases: [
      ['2.2 kg', 2.2, 'kg', 0.05],
      ['2200 g', 2.2, 'g', 0.0005],
      ['4.8 lb', 2.177243376, 'lb', 0.0226796185],
      ['4.8 lbs', 2.177243376, 'lb', 0.0226796185],
      ['77 oz', 2.182913280625, 'oz', 0.01417476],
      ['4 lb 13 oz', 2.182913280625, 'oz', 0.01417476],
    ],
  },
  ratio: {
    options: { unit: '%' },
    cases: [
      ['17.1 %', 0.171, '%', 0.0005],
      ['17.1%', 0.171, '%', 0.0005],
      ['17.1', 0.171, '%', 0.0005],
      ['0.171', 0.171, '1', 0.0005], // nobody prints a share of a sixth of a percent without its unit
      ['0.171 fraction', 0.171, '1', 0.0005],
      ['0.171 %', 0.00171, '%', 5e-6],
      ['17.1 percent', 0.171, '%', 0.0005],
      ['500 ppm', 0.0005, 'ppm', 5e-7],
    ],
  },
  temperature: {
    options: { unit: '°C' },
    cases: [
      ['46 °C', 46, '°C', 0.5],
      ['46 ℃', 46, '°C', 0.5],
      ['46 C', 46, '°C', 0.5],
      ['46 degC', 46, '°C', 0.5],
      ['46 deg C', 46, '°C', 0.5],
      ['46oC', 46, '°C', 0.5], // a raised o, copied from a PDF
      ['-10 °C', -10, '°C', 0.5],
      ['−10 °C', -10, '°C', 0.5], // the minus sign U+2212 is right
      ['115 °F', 46.1111, '°F', 0.27777778],
      ['-40 °F', -40, '°F', 0.27777778],
      ['319.15 K', 46, 'K', 0.005],
      ['46', 46, '°C', 0.5],
      ['46 ± 2 °C', 46, '°C', 0.5], // as sheets print NOCT
      ['46 °C ± 2 °C', 46, '°C', 0.5],
      ['46 °C (±2 K)', 46, '°C', 0.5],
      ['46 +/- 2 °C', 46, '°C', 0.5],
    ],
  },
  'power-coefficient': {
    options: { unit: '%/°C' },
    cases: [
      ['-0.38 %/°C', -0.0038, '%/°C', 5e-5],
      ['-0.38%/°C', -0.0038, '%/°C', 5e-5],
      ['-0.38 % / °C', -0.0038, '%/°C', 5e-5],
      ['-0.38 %/℃', -0.0038, '%/°C', 5e-5],
      ['-0.38 %/K', -0.0038, '%/K', 5e-5],
      ['-0.38 %/C', -0.0038, '%/°C', 5e-5],
      ['-0.38 %/degC', -0.0038, '%/°C', 5e-5],
      ['-0.38 % per °C', -0.0038, '%/°C', 5e-5],
      ['-0.38', -0.0038, '%/°C', 5e-5],
      ['-0.0038 1/K', -0.0038, '1/K', 5e-5],
      ['-0.0038 /K', -0.0038, '1/K', 5e-5],
      ['-3800 ppm/K', -0.0038, 'ppm/K', 5e-7],
      ['-0.2 %/°F', -0.0036, '%/°F', 9e-4],
      ['-0.42 W/K', -0.42, 'W/K', 0.005],
      ['-0.42 W/°C', -0.42, 'W/°C', 0.005],
      ['-420 mW/K', -0.42, 'mW/K', 0.0005],
    ],
  },
  'voltage-coefficient': {
    cases: [
      ['-64 mV/K', -0.064, 'mV/K', 0.0005],
      ['-64 mV/°C', -0.064, 'mV/°C', 0.0005],
      ['-0.064 V/K', -0.064, 'V/K', 0.0005],
      ['-0.29 %/K', -0.0029, '%/K', 5e-5],
    ],
  },
  'current-coefficient': {
    cases: [
      ['3.2 mA/°C', 0.0032, 'mA/°C', 5e-5],
      ['0.0032 A/K', 0.0032, 'A/K', 5e-5],
      ['+0.05 %/°C', 0.0005, '%/°C', 5e-5],
    ],
  },
  money: {
    options: { currency: 'USD' },
    cases: [
      ['289 USD', 289, 'USD', 0.5],
      ['USD 289', 289, 'USD', 0.5],
      ['289.00 USD', 289, 'USD', 0.005],
      ['1,289.00 USD', 1289, 'USD', 0.005],
      ['1 289 SEK', 1289, 'SEK', 0.5],
      ['289', 289, 'USD', 0.5],
      ['289 €', 289, 'EUR', 0.5],
      ['€289', 289, 'EUR', 0.5],
      ['£289', 289, 'GBP', 0.5],
      ['A$ 289', 289, 'AUD', 0.5],
      ['$289 CAD', 289, 'CAD', 0.5],
      ['1.250 KWD', 1.25, 'KWD', 0.0005], // a currency of thousandths
      ['289 AWG', 289, 'AWG', 0.5], // the florin, not the wire
    ],
  },
  duration: {
    cases: [
      ['30 s', 30, 's', 0.5],
      ['90 min', 5400, 'min', 30],
      ['20 h', 72000, 'h', 1800],
      ['1/2 h', 1800, 'h', 900],
      ['2 days', 172800, 'days', 43200],
      ['2 weeks', 1209600, 'weeks'],
      ['18 months', 47304000, 'months'],
      ['5 years', 157680000, 'years', 15768000],
      ['5 yr', 157680000, 'years'],
    ],
  },
  angle: {
    options: { unit: 'deg' },
    cases: [
      ['30 deg', 30, 'deg', 0.5],
      ['30°', 30, 'deg', 0.5],
      ['-1.5 deg', -1.5, 'deg', 0.05],
      ['1 rad', 57.29578, 'rad'],
    ],
  },
  charge: {
    cases: [
      ['100 Ah', 100, 'Ah', 0.5],
      ['2600 mAh', 2.6, 'mAh', 0.0005],
      ['1 kAh', 1000, 'kAh'],
    ],
  },
  energy: {
    cases: [
      ['1280 Wh', 1280, 'Wh', 0.5],
      ['1.28 kWh', 1280, 'kWh', 5],
      ['3.6 MJ', 1000, 'MJ'],
      ['3600 J', 1, 'J'],
    ],
  },
  irradiation: {
    cases: [
      ['4.8 kWh/m2', 4.8, 'kWh/m2', 0.05],
      ['4.8 kWh/m²', 4.8, 'kWh/m2', 0.05],
      ['4800 Wh/m2', 4.8, 'Wh/m2'],
      ['18 MJ/m2', 5, 'MJ/m2'],
    ],
  },
  resistance: {
    cases: [
      ['12 mΩ', 0.012, 'mohm', 0.0005],
      ['12 mΩ', 0.012, 'mohm', 0.0005], // the ohm sign U+2126
      ['5 ohm', 5, 'ohm', 0.5],
      ['10k Ω', 10000, 'kohm', 500],
    ],
  },
}

const rows = Object.entries(silent).flatMap(([kind, { options = {}, cases }]) =>
  cases.map((row) => ({
    kind: kind as QuantityKind,
    options,
    text: row[0],
    value: row[1],
    unit: row[2],
    half: row[3],
  })),
)

test.each(rows)('$kind "$text" is $value', ({ kind, options, text, value, unit, half }) => {
  const { quantity, remarks, problem } = readQuantity(text, kind, options) as ReturnType<typeof readQuantity> & {
    remarks?: unknown[]
  }
  expect(problem).toBeUndefined()
  expect(remarks).toEqual([])
  expect(quantity!.value / value).toBeCloseTo(1, 4)
  expect(quantity!.unit).toBe(unit)
  if (half !== undefined) expect(quantity!.half).toBeCloseTo(half, 8)
})

test('a unit that stepped in says so', () => {
  expect(readQuantity('110', 'power', { unit: 'W' }).quantity?.unitDefaulted).toBe(true)
  expect(readQuantity('110 W', 'power', { unit: 'W' }).quantity?.unitDefaulted).toBe(false)
  expect(readQuantity('289', 'money', { currency: 'EUR' }).quantity).toMatchObject({ unit: 'EUR', unitDefaulted: true })
  expect(readQuantity('0.171', 'ratio', {}).quantity).toMatchObject({ value: 0.171, unit: '1', unitDefaulted: true })
})

test('the dimension of a coefficient follows its unit', () => {
  expect(readQuantity('-64 mV/K', 'voltage-coefficient').quantity?.dimension).toBe('voltage-per-kelvin')
  expect(readQuantity('-0.29 %/K', 'voltage-coefficient').quantity?.dimension).toBe('per-kelvin')
})

describe('temperature ranges', () => {
  test.each([
    '-40..85 °C',
    '-40...+85°C',
    '-40 to 85 °C',
    '-40 °C to +85 °C',
    '-40 °C ~ +85 °C',
    '-40 – 85 °C',
    '-40°C-85°C',
    '-40/+85 °C',
    '−40 °C … +85 °C',
    'from -40 to 85 °C',
    '-40..85',
    '-40 °F to 185 °F',
    '-40 °F to 85 °C',
  ])('%s', (text) => {
    const read = readQuantity(text, 'temperature-range', { unit: '°C' })
    expect(read.quantity).toMatchObject({ value: -40, upper: 85, dimension: 'temperature' })
    expect(read).toMatchObject({ remarks: [] })
  })
})

describe('tolerances', () => {
  test.each<[string, number, number, string]>([
    ['0/+5 %', 0, 0.05, '%'],
    ['0..+5 %', 0, 0.05, '%'],
    ['0 to 5 %', 0, 0.05, '%'],
    ['0/5 %', 0, 0.05, '%'],
    ['-0 % / +5 %', 0, 0.05, '%'],
    ['+5 %', 0, 0.05, '%'],
    ['-5 %', -0.05, 0, '%'],
    ['±3 %', -0.03, 0.03, '%'],
    ['± 3 %', -0.03, 0.03, '%'],
    ['+-3 %', -0.03, 0.03, '%'],
    ['+/-3 %', -0.03, 0.03, '%'],
    ['±3', -0.03, 0.03, '%'],
    ['5 %', -0.05, 0.05, '%'],
    ['-3/+5 %', -0.03, 0.05, '%'],
    ['+5/-0 W', 0, 5, 'W'],
    ['-0/+5 W', 0, 5, 'W'],
    ['0, +5 W', 0, 5, 'W'],
    ['0/+4.99 W', 0, 4.99, 'W'],
  ])('%s', (text, low, high, unit) => {
    const read = readQuantity(text, 'tolerance', { unit: '%' })
    expect(read).toMatchObject({ quantity: { value: low, upper: high, unit }, remarks: [] })
    expect(read.quantity?.dimension).toBe(unit === 'W' ? 'power' : 'ratio')
  })
})
