// What a reader takes for a digit, and a number in two parts: the fix keeps every digit that was typed.
import { expect, test } from 'vitest'
import { readQuantity } from '../../server/src/quantities/read.ts'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'

const fixes = (text: string, kind: QuantityKind) =>
  readQuantity(text, kind).problem?.fixes.map((fix) => fix.text) ?? 'read'

test.each<[typed: string, kind: QuantityKind, meant: string]>([
  ['S5 W', 'power', '55 W'],
  ['1S A', 'current', '15 A'],
  ['1B.6 V', 'voltage', '18.6 V'],
  ['I8.6 V', 'voltage', '18.6 V'],
  ['l8.6 V', 'voltage', '18.6 V'],
  ['O.38 A', 'current', '0.38 A'],
  ['54O mm', 'length', '540 mm'],
  ['1G0 W', 'power', '160 W'],
  ['2Z.1 V', 'voltage', '22.1 V'],
  ['-0.3B %/°C', 'power-coefficient', '-0.38 %/°C'],
  ['18·6 V', 'voltage', '18.6 V'],
  ['18 6 V', 'voltage', '18.6 V'],
  ['1 8.6 V', 'voltage', '18.6 V'],
])('%s is a %s: %s', (typed, kind, meant) => {
  expect(fixes(typed, kind)).toEqual(expect.arrayContaining([meant]))
  expect(fixes(typed, kind)[0]).toBe(meant)
})

test('two numbers with a unit each are not joined', () => {
  expect(fixes('110 W, 115 W', 'power')).toEqual(['110 W', '115 W'])
})

test.each(['18.6¹ V', '18.6² V', '18.6 ³ V'])('the footnote of %s does not count', (typed) => {
  const { quantity, notes } = readQuantity(typed, 'voltage') as Extract<
    ReturnType<typeof readQuantity>,
    { quantity: object }
  >
  expect(quantity.value).toBe(18.6)
  expect(notes.map(({ message }) => message).join()).toBeTruthy()
  expect(notes[0]!.fixes[0]!.text.replace(/ +/g, ' ')).toBe('18.6 V')
})

test('the raised digit of a unit is one', () => {
  expect(readQuantity('6 mm²', 'area')).toMatchObject({ quantity: { value: 6e-6 }, notes: [] })
})

test.each<[typed: string, kind: QuantityKind]>([
  ['119.0 54x2 mm', 'length'],
  ['119.0 54  x 2 mm', 'length'],
])('%s are two numbers of a product and not one in two parts', (typed, kind) => {
  expect(fixes(typed, kind)).not.toContainEqual(expect.stringContaining('119.054'))
})
