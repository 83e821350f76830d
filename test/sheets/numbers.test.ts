import { expect, test } from 'vitest'
import { decimalOf, numbersIn, unitAlone, unitInLabel } from '../../server/src/sheets/numbers.ts'

const shown = (text: string, decimal: '.' | ',' = '.') =>
  numbersIn(text, decimal).map(({ number, unit, join }) => [number, unit, join].filter(Boolean).join(' '))

test.each([
  ['18.6 V', ['18.6 V']],
  ['(−0.38±0.05)%/K', ['-0.38 %/K', '0.05 %/K spread']],
  ['-40 °C ~ +85 °C', ['-40 °C', '85 °C range']],
  ['-40–85°C', ['-40 °C', '85 °C range']],
  ['1190 x 540 x 2.5 mm (46.9 x 21.3 in)', ['1190 mm', '540 mm by', '2.5 mm by', '46.9 in', '21.3 in by']],
  ['1190 mm×540 mm', ['1190 mm', '540 mm by']],
  ['41.75 in x 20 1/2 in x 3/8 in', ['41.75 in', '20 1/2 in by', '3/8 in by']],
  ['2.2 kg / 4.85 lb', ['2.2 kg', '4.85 lb slash']],
  ['600 V (UL) / 1000 V (IEC)', ['600 V', '1000 V']],
  ['DC 1000 V', ['1000 V']],
  ['1,000 V', ['1000 V']],
  ['1 500 V', ['1500 V']],
  ['46 ± 2 °C', ['46 °C', '2 °C spread']],
  ['-124 mV/°C', ['-124 mV/°C']],
])('%s', (text, numbers) => expect(shown(text)).toEqual(numbers))

test('a decimal comma where the sheet writes commas', () => {
  expect(decimalOf(['22,1 V', '5,92 A', '1.000 V'])).toBe(',')
  expect(shown('1.000 V', ',')).toEqual(['1000 V'])
  expect(shown('−0,38 %/K', ',')).toEqual(['-0.38 %/K'])
})

test.each([
  ['[V]', 'V'],
  ['(%/°C)', '%/°C'],
  ['in mm', 'mm'],
  ['Voc', null],
])('the unit %s', (text, unit) => expect(unitAlone(text)).toBe(unit))

test.each([
  ['Weight (kg)', 'kg'],
  ['Length in mm', 'mm'],
  ['Rated power, W', 'W'],
  ['Open-circuit voltage (Voc)', null],
])('the unit of the label %s', (text, unit) => expect(unitInLabel(text)).toBe(unit))
