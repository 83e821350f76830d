import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readFile } from '../../server/src/records/read.ts'
import { panel, ratings, reported } from './reported.ts'

const quantity = 'a number with a unit is expected, such as'
const ratingsAs = (from: string, to: string) => panel({ stc: ratings.replace(from, to) })
const notRead = 'so it is not read.'

test.each([
  // keys
  [panel({ top: 'voltage: 3 V' }), `unknown-field [voltage] The record has no field voltage, ${notRead}`],
  [
    panel({ top: 'wieght: 3 kg' }),
    `unknown-field [wieght] The record has no field wieght, ${notRead} Did you mean weight?`,
  ],
  [panel({ top: 'Manufacturer: X' }), 'other-word [Manufacturer] Manufacturer is read as maker.'],
  [ratingsAs('vmp', 'vmpp'), 'other-word [vmpp] vmpp is read as vmp.'],
  [ratingsAs('pmax', '"Wp"'), 'other-word ["Wp"] Wp is read as pmax.'],
  [panel({ top: 'a/b~c: 3' }), `unknown-field [a/b~c] The record has no field a/b~c, ${notRead}`],
  [panel({ top: 'length: 2 m' }), 'misplaced-field [length] length is at the left margin; it belongs under size.'],
  [
    panel({ top: 'voc: 22 V' }),
    'misplaced-field [voc] voc is at the left margin; it belongs under stc, temperature_coefficients or noct.',
  ],
  [
    panel({ size: '{ length: 2 m, width: 1 m, weight: 3 kg }' }),
    'misplaced-field [weight] weight is under size; it belongs at the left margin or under mounting_frame.',
  ],
  // what is not there
  [ratingsAs('voc: 22.1 V, ', ''), 'missing-field [stc] voc is missing under stc, such as voc: 22.1 V.'],
  [
    panel().replace('name: Tern 110', ''),
    'missing-field [format] name is missing from the record, such as name: Tern 110.',
  ],
  [ratingsAs('voc: 22.1 V', 'voc:'), 'missing-field [voc] voc has no value yet, such as voc: 22.1 V.'],
  [panel({ stc: '' }), 'missing-field [stc] stc has no value yet.'],
  [panel({ stc: '{ pmax: 110 W }' }), 'missing-field [stc] vmp, imp, voc and isc are missing under stc.'],
  ['format: 1\n', 'missing-field [format] name, stc and size are missing from the record.'],
  [
    panel({ stc: '{ pmax: 110 W, vmp:, imp:, voc:, isc: }', size: '{ width:, length: 1190 mm }' }),
    'missing-field [vmp] Still to be filled in: vmp, imp, voc and isc under stc; width under size.',
  ],
  [
    panel({ top: 'warranty:\n  output:\n    - { years: 5, at_least: 80 % }\n    - years: 10' }),
    'missing-field [years] at_least is missing under output, such as at_least: 80 %.',
  ],
  [panel({ top: 'weight:' }), 'empty-field [weight] weight has no value.'],
  [panel({ top: 'certificates:\n  -\n  - IEC 61215' }), 'empty-field [certificates] The certificate has no value.'],
  ['', 'missing-field [] The panel record is empty; wattproof new panel begins one.'],
  ['# nothing yet\n', 'missing-field [] The panel record is empty; wattproof new panel begins one.'],
  // another shape, and what makes one of a number is reported alone
  [
    ratingsAs('22.1 V', '{22.1 V}'),
    'braces-around-number [{22.1 V}] The braces around 22.1 V make a map of it. Write 22.1 V without them.',
  ],
  [panel({ top: 'weight: { amount: 3 kg }' }), `wrong-kind [weight] weight is a group of fields; ${quantity} 2.2 kg.`],
  [panel({ top: 'weight:\n  - 3 kg' }), `wrong-kind [weight] weight is a list; ${quantity} 2.2 kg.`],
  [panel({ top: 'weight: [3 kg]' }), `wrong-kind [weight] weight is a list; ${quantity} 2.2 kg.`],
  [
    panel({ stc: '110 W' }),
    'wrong-kind [110 W] stc is "110 W"; a group of fields is expected (pmax, tolerance, vmp, imp, …).',
  ],
  [
    panel({ stc: '[110 W]' }),
    'wrong-kind [stc] stc is a list; a group of fields is expected (pmax, tolerance, vmp, imp, …).',
  ],
  [panel({ size: '1190 x 540 mm' }), 'wrong-kind [1190 x 540 mm] Give length and width a field each: 1190 mm, 540 mm.'],
  [
    panel({ top: 'certificates: IEC 61215' }),
    'wrong-kind [IEC 61215] certificates is "IEC 61215"; a list is expected, in [ ] or one item a line after a dash.',
  ],
  [
    panel({ top: 'certificates: [{ a: b }]' }),
    'wrong-kind [{ a: b }] The certificate is a group of fields; a text is expected, such as IEC 61215.',
  ],
  [
    panel({ top: 'family: { a: b }' }),
    'wrong-kind [family] family is a group of fields; a text is expected, such as Tern.',
  ],
  [panel({ top: 'bifacial: maybe' }), 'wrong-kind [maybe] bifacial is "maybe"; true or false is expected.'],
  [
    panel({ top: 'cells: { in_series: 36.5 }' }),
    'wrong-kind [36.5] cells in series is "36.5"; a whole number is expected, such as 36.',
  ],
  [
    panel({ top: 'warranty: { workmanship: { years: five } }' }),
    'wrong-kind [five] years is "five"; a number is expected, such as 2.',
  ],
  [
    '- a\n- b\n',
    'wrong-kind [- a] The panel record is a list; a group of fields is expected (format, name, maker, family, …).',
  ],
  [
    'hello\n',
    'wrong-kind [hello] The panel record is "hello"; a group of fields is expected (format, name, maker, family, …).',
  ],
  // words
  [
    panel({ top: 'construction: flexable' }),
    'not-a-choice [flexable] construction "flexable" is none of flexible, rigid, folding. Did you mean flexible?',
  ],
  [panel({ top: 'surface: etfe' }), 'other-word [etfe] front surface "etfe" is read as ETFE.'],
  [panel({ top: 'surface: ""' }), 'not-a-choice [""] front surface "" is none of ETFE, PET, glass, other.'],
  [panel({ top: 'surface: 5' }), 'not-a-choice [5] front surface "5" is none of ETFE, PET, glass, other.'],
  [
    panel({ top: 'surface: [glass]' }),
    'wrong-kind [surface] front surface is a list; one of ETFE, PET, glass, other is expected.',
  ],
  [
    panel({ top: 'cells: { technology: monocrystalline }' }),
    'other-word [monocrystalline] cell technology "monocrystalline" is read as mono.',
  ],
  [panel().replace('format: 1', 'format: 2'), 'wrong-format [2] This is format 2, and only format 1 is known.'],
  [panel().replace('format: 1', 'format: one'), 'wrong-format [one] This is format one, and only format 1 is known.'],
  // dates and numbers
  [
    panel({ top: 'price: { quoted_on: 4.10.2026 }' }),
    'wrong-text [4.10.2026] quoted on "4.10.2026" is not written as year-month-day, like 2026-10-04.',
  ],
  [
    panel({ top: 'price: { quoted_on: 2026 }' }),
    'wrong-kind [2026] quoted on is "2026"; a date is expected, such as 2026-10-04.',
  ],
  [
    panel({ top: 'price: { quoted_on: 2026-02-29 }' }),
    'wrong-text [2026-02-29] quoted on 2026-02-29 is not a day of the calendar.',
  ],
  [panel({ top: 'cells: { in_series: 0 }' }), 'out-of-range [0] cells in series 0 is below 1.'],
  // quantities, on the characters that are wrong
  [panel({ top: 'weight: 2.2 V' }), 'wrong-dimension [V] 2.2 V is a voltage; a weight belongs here, such as 2.2 kg.'],
  [
    panel({ top: 'weight:   "2.2 V"' }),
    'wrong-dimension [V] 2.2 V is a voltage; a weight belongs here, such as 2.2 kg.',
  ],
  [ratingsAs('22.1 V', "'22.1 A'"), 'wrong-dimension [A] 22.1 A is a current; a voltage belongs here, such as 22.1 V.'],
  [
    panel({ stc: '\n  pmax: 110 W\n  vmp: 18.6 Vx # typ\n  imp: 5.92 A\n  voc: 22.1 V\n  isc: 6.31 A' }),
    'unknown-unit [Vx] "Vx" is no unit known here; a voltage is expected here, such as 22.1 V.',
  ],
  [
    panel({ top: 'weight: ~' }),
    'quantity-not-given [~] "~" says that it is not given: leave the field out, or write 2.2 kg.',
  ],
])('%#: %s', (text, message) => expect(reported(text)).toEqual([message]))

test.each([
  [{ top: 'family: 110' }],
  [{ top: 'datasheet: { revision: 2, typed_by: 17 }' }],
  [{ top: 'certificates: []' }],
  [{ top: 'certificates: [IEC 61215, ]' }],
  [{ top: 'price: { quoted_on: 2024-02-29 }' }],
])('a text may look like a number, lists may be empty: %o', (changes) => {
  expect(reported(panel(changes))).toEqual([])
})

test('a misspelt field that is required weighs as much as a missing one', () => {
  const severity = (text: string) =>
    readFile('a.panel.yaml', text)!
      .readFindings()
      .map((f) => f.severity)
  expect(severity(ratingsAs('vmp', 'vpmm'))).toEqual(['error'])
  expect(severity(panel({ top: 'wieght: 3 kg' }))).toEqual(['warning'])
})

test('other kinds: numbers of a list, a list of twelve, a currency', () => {
  const climate = readFileSync('samples/systems/climates/example-bay.climate.yaml', 'utf8')
  const short = climate.replace(/^sun: \[[^,]+,/m, 'sun: [')
  expect(reported(short, 'a.climate.yaml')).toEqual(['out-of-range [sun] sun has 11 values, where 12 are expected.'])
  expect(reported('format: 1\ncurrency: usd\n', 'wattproof.yaml')).toEqual([
    'wrong-text [usd] currency "usd" is not written like USD.',
  ])
  const boat = readFileSync('samples/systems/boat.system.yaml', 'utf8')
  const months = boat.replace('months: [5, 6', 'months: [0, 13')
  expect(reported(months, 'a.system.yaml')).toEqual([
    expect.stringMatching(/^out-of-range \[0\] .* 0 is below 1\.$/),
    expect.stringMatching(/^out-of-range \[13\] .* 13 is above 12\.$/),
  ])
})

test('JSON: the same on the characters between the quotes', () => {
  const json = JSON.stringify({
    format: 1,
    name: 'Tern 110',
    wieght: '2 kg',
    cells: { in_series: '36' },
    stc: { pmax: '110 W', vmp: '18.6 V', imp: '5.92 A', voc: '22.1 A' },
    size: { length: 1190, width: 540 },
  })
  expect(reported(json, 'a.panel.json')).toEqual([
    'unknown-field ["wieght"] The record has no field wieght, so it is not read. Did you mean weight?',
    'missing-field ["stc"] isc is missing under stc, such as isc: 6.31 A.',
    'wrong-kind ["36"] cells in series is the text "36", in quotes; a whole number is expected, such as 36.',
    'wrong-dimension [A] 22.1 A is a current; a voltage belongs here, such as 22.1 V.',
  ])
})
