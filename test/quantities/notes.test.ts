import { expect, test } from 'vitest'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import type { ReadOptions } from '../../server/src/quantities/read.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'

/** Read all the same, with a quiet fix. `marked` has the characters that the note is on in brackets. */
type Case = [QuantityKind, marked: string, value: number, code: string, fix: string, certainty: string, ReadOptions?]

test.each<Case>([
  ['voltage', '[18,6] V', 18.6, 'decimal-comma', '18.6 V', 'same'],
  ['ratio', '[0,171] %', 0.00171, 'decimal-comma', '0.171 %', 'same'], // a leading zero parts no thousands
  ['power-coefficient', '-[0,38] %/K', -0.0038, 'decimal-comma', '-0.38 %/K', 'same'],
  ['length', '[1.190,5] mm', 1.1905, 'decimal-comma', '1190.5 mm', 'same'],
  ['length', "[1'190,5] mm", 1.1905, 'decimal-comma', '1190.5 mm', 'same'],
  ['money', '[289,50] EUR', 289.5, 'decimal-comma', '289.50 EUR', 'same'],
  ['tolerance', '±[2,5] %', -0.025, 'decimal-comma', '±2.5 %', 'same'],
  ['temperature-range', '[-]40..85 °C'.replace('-', '–'), -40, 'spelling', '-40..85 °C', 'same'],
  ['temperature', '46 [º]C', 46, 'spelling', '46 °C', 'same'],
  ['temperature', '[–]10 °C', -10, 'spelling', '-10 °C', 'same'],
  ['power', '[１１０] W', 110, 'spelling', '110 W', 'same'],
  ['power', '110 [w]', 110, 'spelling', '110 W', 'same'],
  ['power', '[1_000] W', 1000, 'spelling', '1000 W', 'same'],
  ['power', '[1e3] W', 1000, 'spelling', '1000 W', 'same'],
  ['power', '[5.] W', 5, 'spelling', '5 W', 'same'],
  ['power', '110 W[;]', 110, 'spelling', '110 W', 'same'],
  ['power', '[~]110 W', 110, 'spelling', '110 W', 'guess'],
  ['power', '[approx.] 110 W', 110, 'spelling', '110 W', 'guess'],
  ['ratio', '[≥] 20 %', 0.2, 'spelling', '20 %', 'guess'],
  ['voltage', '[<=] 600 V', 600, 'spelling', '600 V', 'guess'],
  ['voltage', '[max.] 600 V', 600, 'spelling', '600 V', 'guess'],
  ['current', '5.92 A[, typ]', 5.92, 'spelling', '5.92 A', 'guess'],
  ['money', '289 [eur]', 289, 'spelling', '289 EUR', 'same'],
  ['money', '[$]289', 289, 'spelling', 'CAD 289', 'same', { currency: 'CAD' }],
  ['money', '289[$]', 289, 'spelling', '289 USD', 'same', { currency: 'USD' }],
  ['money', '[289.-] CHF', 289, 'spelling', '289 CHF', 'same'],
  ['money', '[1,289] USD', 1289, 'spelling', '1289 USD', 'same'],
  ['temperature-range', '[85..-40 °C]', -40, 'spelling', '-40 to 85 °C', 'same'],
])('%s "%s" is read as %d', (kind, marked, value, code, fix, certainty, options = {}) => {
  const text = marked.replace(/[[\]]/g, '')
  const read = readQuantity(text, kind, options)
  expect(read.problem).toBeUndefined()
  expect(read.quantity!.value).toBeCloseTo(value, 10)
  const [note, ...more] = read.quantity ? read.notes : []
  expect(more).toEqual([])
  const { start, end } = note!
  expect(`${text.slice(0, start)}[${text.slice(start, end)}]${text.slice(end)}`).toBe(marked)
  expect(note).toMatchObject({ code, fixes: [{ text: fix, certainty }] })
})

test('the fix of one note makes the other harmless fixes too', () => {
  const read = readQuantity('–0,38 %/ºC', 'power-coefficient')
  const texts = read.quantity ? read.notes.flatMap((r) => r.fixes.map((m) => m.text)) : []
  expect(texts).toEqual(['-0.38 %/°C', '-0.38 %/°C', '-0.38 %/°C'])
})
