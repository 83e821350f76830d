// Slips of reading: letters for digits, a footnote's digit, a dot or a space for the point, another unit, day and month. What is
// offered first is what was meant, and nothing that is offered drops a leading digit or changes what a number measures.
import { describe, expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { Measure } from '../../server/src/records/field.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { readFile } from '../../server/src/records/read.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { tern } from './records.ts'

const sheet: Readonly<Record<string, string>> = {
  ...tern,
  '/weight': '1.9 kg',
  '/datasheet/typed_on': '2026-02-11',
}

function yamlWith(pointer: string, typed: string): string {
  const blocks: Record<string, string[]> = {}
  for (const [at, text] of Object.entries({ ...sheet, [pointer]: typed })) {
    const [, block = '', field] = at.split('/')
    const lines = (blocks[block] ??= block === 'cells' ? ['cells:', '  technology: mono'] : field ? [`${block}:`] : [])
    lines.push(field ? `  ${field}: ${text}` : `${block}: ${text}`)
  }
  return [
    'format: 1',
    'name: Tern',
    'construction: flexible',
    'surface: ETFE',
    ...Object.values(blocks).flat(),
    '',
  ].join('\n')
}

function found(text: string) {
  const library = createLibrary()
  library.put('it.panel.yaml', text)
  return checkFile(library, 'it.panel.yaml', { today: '2026-09-01' })!.findings
}

const valueIn = (text: string, pointer: string) => {
  const field = (readFile('it.panel.yaml', text) as ReadFile).fields.get(pointer) as Measure | undefined
  return field && { value: field.value, dimension: field.quantity?.dimension }
}

/** What the first correction of a field makes of it. */
function fixed(pointer: string, typed: string) {
  const text = yamlWith(pointer, typed)
  const first = found(text).find((one) => one.corrections[0]?.pointer === pointer)?.corrections[0]
  return first ? first.text : 'no fix'
}

test('the sheet itself is in order', () => {
  expect(found(yamlWith('/weight', sheet['/weight']!)).filter(({ severity }) => severity !== 'hint')).toEqual([])
})

describe.each([
  [
    'a letter for a digit',
    [
      ['/stc/pmax', 'llO W', '110 W'],
      ['/stc/pmax', '11O W', '110 W'],
      ['/stc/vmp', '1B.6 V', '18.6 V'],
      ['/stc/vmp', 'l8.G V', '18.6 V'],
      ['/stc/imp', 'S.92 A', '5.92 A'],
      ['/stc/imp', '5.9Z A', '5.92 A'],
      ['/stc/voc', 'ZZ.I V', '22.1 V'],
      ['/stc/isc', 'G.31 A', '6.31 A'],
      ['/stc/isc', '6.3l A', '6.31 A'],
      ['/stc/efficiency', 'I7.1 %', '17.1 %'],
      ['/temperature_coefficients/pmax', '-O.3B %/°C', '-0.38 %/°C'],
      ['/temperature_coefficients/voc', '-0.Z9 %/°C', '-0.29 %/°C'],
      ['/temperature_coefficients/isc', 'O.05 %/°C', '0.05 %/°C'],
      ['/noct/temperature', '4G °C', '46 °C'],
      ['/cells/in_series', '3G', '36'],
      ['/size/length', '119O mm', '1190 mm'],
      ['/size/length', 'll90 mm', '1190 mm'],
      ['/size/width', 'S40 mm', '540 mm'],
      ['/weight', 'l.9 kg', '1.9 kg'],
    ],
  ],
  [
    'the digit of a footnote',
    [
      ['/stc/pmax', '110¹ W', '110 W'],
      ['/stc/pmax', '1101 W', '110 W'],
      ['/stc/vmp', '18.6² V', '18.6 V'],
      ['/stc/imp', '5.92 A ³', '5.92 A'],
      ['/stc/vmp', '18.6*1 V', '18.6 V'],
      ['/stc/vmp', '18.6*) V', '18.6 V'],
      ['/stc/pmax', '110*2) W', '110 W'],
      ['/noct/temperature', '462 °C', '46 °C'],
      ['/size/length', '11901 mm', '1190 mm'],
      ['/size/width', '5402 mm', '540 mm'],
      ['/cells/in_series', '361', '36'],
    ],
  ],
  [
    'a dot or a space',
    [
      ['/stc/vmp', '18·6 V', '18.6 V'],
      ['/stc/vmp', '18 6 V', '18.6 V'],
      ['/stc/vmp', '1 8.6 V', '18.6 V'],
      ['/stc/vmp', '18. 6 V', '18.6 V'],
      ['/stc/voc', '22 .1 V', '22.1 V'],
      ['/stc/imp', '5•92 A', '5.92 A'],
      ['/stc/imp', '5 92 A', '5.92 A'],
      ['/stc/pmax', '1 10 W', '110 W'],
      ['/size/length', '11 90 mm', '1190 mm'],
      ['/size/width', '54 0 mm', '540 mm'],
      ['/temperature_coefficients/pmax', '-0·38 %/°C', '-0.38 %/°C'],
      ['/temperature_coefficients/pmax', '-0 .38 %/°C', '-0.38 %/°C'],
    ],
  ],
  [
    'another unit',
    [
      ['/noct/temperature', '115 °C', '46 °C'],
      ['/noct/temperature', '46 °F', '46 °C'],
      ['/weight', '1900 kg', '1900 g'],
      ['/weight', '1.9 g', '1.9 kg'],
      ['/weight', '4.2 kg', '4.2 lb'],
      ['/weight', '67 kg', '67 oz'],
      ['/weight', '67 g', '67 oz'],
      ['/datasheet/typed_on', '2026-11-02', '2026-02-11'],
    ],
  ],
] as [string, [string, string, string][]][])('%s', (_, cases) => {
  test.each(cases)('%s: %s is %s', (pointer, typed, meant) => {
    expect(fixed(pointer, typed)).toBe(meant)
  })
})

// every field with every such slip at every place: what is offered for it
const letters: Readonly<Record<string, string>> = { 0: 'O', 1: 'l', 2: 'Z', 5: 'S', 6: 'G', 8: 'B' }
const slips: Readonly<Record<string, (number: string) => string[]>> = {
  'a letter': (number) =>
    [...number].flatMap((c, i) => (letters[c] ? [number.slice(0, i) + letters[c] + number.slice(i + 1)] : [])),
  'a footnote': (number) => ['1', '2', '3', '¹', '²'].map((digit) => number + digit),
  'a dot': (number) => (number.includes('.') ? [number.replace('.', '·'), number.replace('.', ' ')] : []),
  'a space': (number) =>
    [...number].flatMap((c, i) =>
      i > 0 && /\d/.test(number[i - 1]!) && /\d/.test(c) ? [`${number.slice(0, i)} ${number.slice(i)}`] : [],
    ),
}
test.each(Object.keys(slips))('%s: no first correction drops a leading digit or changes a dimension', (kind) => {
  const wrong: string[] = []
  for (const [pointer, printed] of Object.entries(sheet)) {
    if (pointer.startsWith('/datasheet')) continue
    const [number = '', ...rest] = printed.split(' ')
    const meant = valueIn(yamlWith(pointer, printed), pointer)!
    for (const other of slips[kind]!(number)) {
      const text = yamlWith(pointer, [other, ...rest].join(' '))
      for (const { corrections } of found(text)) {
        const first = corrections[0]
        if (!first) continue
        const after = valueIn(applyEdits(text, first.edits), first.pointer)
        const own = valueIn(yamlWith(pointer, printed), first.pointer)
        const isLess = Math.abs(Number(after?.value)) < 0.7 * Math.abs(Number(own?.value))
        if (after?.dimension !== own?.dimension || isLess)
          wrong.push(`${pointer} ${printed} as ${other}: ${first.pointer} ${first.text}`)
      }
    }
    expect(meant.value).toBeDefined()
  }
  expect(wrong).toEqual([])
})
