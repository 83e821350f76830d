import { expect, test } from 'vitest'
import type { QuantityKind, QuantityProblem } from '../../server/src/quantities/quantity.ts'
import type { ReadOptions } from '../../server/src/quantities/read.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'
import { phraseInWords } from '../../server/src/wording/phrase.ts'

/** `marked` has the characters that the finding is on in brackets. */
type Case = [kind: QuantityKind, marked: string, code: QuantityProblem['code'], fixes: string[], options?: ReadOptions]

test.each<Case>([
  ['voltage', '18.6 [A]', 'wrong-dimension', ['18.6 V']],
  ['voltage', '18.6[A]', 'wrong-dimension', ['18.6V']],
  ['length', '1190 [kg]', 'wrong-dimension', ['1190 mm', '1190 in'], { unit: 'mm' }],
  ['length', '46.9 [lb]', 'wrong-dimension', ['46.9 in'], { unit: 'in' }],
  ['area', '6 [mm]', 'wrong-dimension', ['6 mm2']],
  ['charge', '100 [A]', 'wrong-dimension', ['100 Ah']],
  ['irradiation', '4.8 [kWh]', 'wrong-dimension', ['4.8 kWh/m2']],
  ['power-coefficient', '-0.38 [%]', 'wrong-dimension', ['-0.38 %/°C']],
  ['voltage-coefficient', '-64 [mV]', 'wrong-dimension', ['-64 mV/°C']],
  ['temperature-range', '-40..85 [V]', 'wrong-dimension', ['-40..85 °C']],
  ['tolerance', '0/+5 [A]', 'wrong-dimension', ['0/+5 %']],
  ['mass', '2.2 [USD]', 'wrong-dimension', ['2.2 kg', '2.2 lb']],
  ['money', '289 [W]', 'wrong-dimension', ['289 EUR'], { currency: 'EUR' }],

  ['voltage', '18.6 [Vt]', 'unknown-unit', ['18.6 V']],
  ['voltage', '18.6 [mv]', 'unknown-unit', ['18.6 mV', '18.6 V']],
  ['length', '1190 [nm]', 'unknown-unit', ['1190 mm', '1190 cm', '1190 km']],
  ['money', '289 [UDS]', 'unknown-unit', ['289 USD', '289 UZS']],
  ['money', '[$]289', 'unknown-unit', ['289 USD', '289 CAD', '289 AUD']],
  ['money', '[¥]289', 'unknown-unit', ['289 JPY', '289 CNY'], { currency: 'USD' }],

  ['power', '110 [kW @ STC]', 'unknown-unit', ['110 kW']],
  ['power', '110[-W]', 'unknown-unit', ['110 W']],
  ['power', '[11O W]', 'no-number', ['110 W']],
  ['money', '2.6 [USD/W]', 'unknown-unit', ['2.6 USD']],

  ['length', '[46 7/8]', 'missing-unit', ['46 7/8 in', '46 7/8 ft'], { unit: 'mm' }],
  ['power', '[110]', 'missing-unit', ['110 W', '110 kW', '110 mW']],
  ['ratio', '[17.1]', 'missing-unit', ['17.1 %', '17.1 ppm']],
  ['temperature-range', '[-40..85]', 'missing-unit', ['-40..85 °C', '-40..85 °F', '-40..85 K']],

  ['power', '110 W [5.92 A]', 'two-numbers', ['110 W']],
  ['voltage', '18.6 V / [5.92 A]', 'two-numbers', ['18.6 V']],
  ['voltage', '12/[24 V]', 'two-numbers', ['12 V', '24 V']],
  ['voltage', '10..[20 V]', 'two-numbers', ['10 V', '20 V']],
  ['length', '1190 x [540 mm]', 'two-numbers', ['1190 mm', '540 mm']],
  // one of three would drop two
  ['length', '1190 × [540 × 2.5 mm]', 'two-numbers', []],
  ['length', '[46.9 in (1109 mm)]', 'two-numbers', ['46.9 in', '1109 mm']],

  ['voltage', '22 . [1 V]', 'two-numbers', ['22.1 V']],
  ['voltage', '[2O.1 V]', 'no-number', ['20.1 V']],
  ['voltage', '600 V (UL) / [1000 V (IEC)]', 'two-numbers', ['600 V', '1000 V']],
  ['power', '110 W [±3%]', 'two-numbers', ['110 W']],
  ['power', '18. [6 W]', 'two-numbers', ['18.6 W']],

  ['voltage', '[1,190] V', 'ambiguous-comma', ['1190 V', '1.190 V']],
  ['voltage', '-[1,190] V', 'ambiguous-comma', ['-1190 V', '-1.190 V']],
  ['money', '[1.289] EUR', 'ambiguous-comma', ['1289 EUR', '1.2890 EUR']],

  ['power-coefficient', '[- 0.38] %/K', 'misplaced-sign', ['-0.38 %/K']],
  ['power-coefficient', '[− 0.38] %/K', 'misplaced-sign', ['-0.38 %/K']],
  ['power-coefficient', '0.38 [-] %/K', 'misplaced-sign', ['-0.38 %/K']],
  ['power-coefficient', '[--0.38] %/K', 'misplaced-sign', ['-0.38 %/K']],
  ['voltage', '[±3] V', 'misplaced-sign', ['3 V']],
  ['tolerance', '[3/5] %', 'misplaced-sign', ['-3/+5 %', '+3/+5 %']],

  ['power', '[abc]', 'no-number', []],
  ['power', '[Pmax 110 W]', 'no-number', ['110 W']],
  ['power', '[l10 W]', 'no-number', ['110 W']],
  ['power', '[(110 W)]', 'no-number', ['110 W']],
  ['power', '[1.2.3 W]', 'no-number', []],
  ['power', '[1e999 W]', 'no-number', []],
  ['power', '[1e308 W]', 'no-number', []],
  ['area', '[1e-300 mm2]', 'no-number', []],
  ['area', '[41 AWG]', 'no-number', []],
  ['temperature-range', '[85 °C]', 'no-number', []],
  ['temperature-range', '[-40 85 °C]', 'no-number', ['-40 to 85 °C']],
])('%s "%s" is %s', (kind, marked, code, fixes, options = {}) => {
  const text = marked.replace(/[[\]]/g, '')
  const { problem } = readQuantity(text, kind, options)
  expect(problem?.code).toBe(code)
  const { start, end } = problem!
  expect(`${text.slice(0, start)}[${text.slice(start, end)}]${text.slice(end)}`).toBe(marked)
  expect(problem!.fixes.map((m) => m.text)).toEqual(fixes)
})

test.each([
  'n/a',
  'N/A',
  'na',
  'TBD',
  't.b.d.',
  '-',
  '--',
  '—',
  'NaN',
  'null',
  '~',
  'unknown',
  '?',
  '',
  ' ',
  '- W',
  'TBD W',
])('"%s" is not given', (text) => {
  expect(readQuantity(text, 'power', { unit: 'W' }).problem).toMatchObject({ code: 'not-given', fixes: [] })
})

test('messages say what was typed and what is expected', () => {
  const message = (text: string, kind: QuantityKind) => phraseInWords(readQuantity(text, kind).problem!.message)
  expect(message('18.6 A', 'voltage')).toBe('18.6 A is a current; a voltage belongs here, such as 22.1 V')
  expect(message('18.6 Vt', 'voltage')).toBe('"Vt" is no unit known here; a voltage is expected here, such as 22.1 V')
  expect(message('1,190 V', 'voltage')).toBe('"1,190" may be 1190 or 1.190; write the one that is meant')
  expect(message('22.1.1 V', 'voltage')).toBe('No number is read in "22.1.1 V"; a voltage is expected, such as 22.1 V')
  expect(message('1e99 V', 'voltage')).toBe(
    '1e99 is beyond any number of a record; a voltage is expected, such as 22.1 V',
  )
  expect(message('TBD', 'power')).toBe('"TBD" says that it is not given: leave the field out, or write 110 W')
  expect(message('-0.38 %', 'power-coefficient')).toBe(
    '-0.38 % is a plain share; a change of power per degree belongs here, such as -0.38 %/°C',
  )
})

test('only a blank behind the sign is fixed without asking', () => {
  const certain = (text: string, kind: QuantityKind) => readQuantity(text, kind).problem?.fixes.map((m) => m.certainty)
  expect(certain('- 0.38 %/K', 'power-coefficient')).toEqual(['same'])
  expect(certain('18.6 A', 'voltage')).toEqual(['guess'])
  expect(certain('1,190 V', 'voltage')).toEqual(['guess', 'guess'])
})

test('a pasted page is not searched for a quantity', () => {
  const { problem } = readQuantity('110 W '.repeat(100), 'power')
  expect(problem).toMatchObject({ code: 'no-number', start: 0, end: 200, fixes: [] })
})
