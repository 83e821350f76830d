import { describe, expect, test } from 'vitest'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'
import { silent } from './silent-cases.ts'

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
  const { quantity, notes, problem } = readQuantity(text, kind, options) as ReturnType<typeof readQuantity> & {
    notes?: unknown[]
  }
  expect(problem).toBeUndefined()
  expect(notes).toEqual([])
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
    expect(read).toMatchObject({ notes: [] })
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
    expect(read).toMatchObject({ quantity: { value: low, upper: high, unit }, notes: [] })
    expect(read.quantity?.dimension).toBe(unit === 'W' ? 'power' : 'ratio')
  })
})

test.each([
  ['1', '%', 0.01],
  ['0.99', '%', 0.99],
  ['1', undefined, 1],
  ['1.01', undefined, null],
])('a bare share %s where the record expects %s', (text, unit, value) => {
  expect(readQuantity(text, 'ratio', unit === undefined ? {} : { unit }).quantity?.value ?? null).toBe(value)
})
