import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { readFile } from '../../server/src/records/read.ts'
import { panelValues } from '../../server/src/values/panel-values.ts'
import { siteOf } from '../../server/src/values/site.ts'
import { panel } from './reported.ts'

const whole = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const read = (text: string) => readFile('tern-110.panel.yaml', text) as ReadFile<'panel'>
const known = (text: string) =>
  panelValues(read(text).record, siteOf(undefined)).flatMap(({ id, value }) => (value === null ? [] : [id]))
const all = known(whole)

/** One line is broken; which derived values are lost, and which rule says so. */
test.each([
  ['a colon is missing', 'weight: 2.2 kg', 'weight 2.2 kg', ['power_per_weight', 'weight_per_area']],
  ['a brace is missing', '-40..85 °C }', '-40..85 °C', []],
  ['a quote is not closed', 'notes: Junction', 'notes: "Junction', []],
  ['a word stands alone', 'surface: ETFE', 'ETFE', []],
  ['a value is of another kind', 'voc: 22.1 V', 'voc: [22.1 V]', ['fill_factor', 'voc_cold', 'voc_per_cell']],
  ['a unit is wrong', 'isc: 6.31 A', 'isc: 6.31 V', ['fill_factor', 'isc_design']],
  [
    'a decimal comma in braces',
    'length: 1190 mm',
    'length: 1190,5 mm',
    ['area', 'efficiency', 'power_per_area', 'weight_per_area'],
  ],
  ['a tab indents', '  vmp: 18.6 V', '\tvmp: 18.6 V', []],
  ['the choice is unknown', 'construction: flexible', 'construction: bendy', []],
  ['a field is typed twice', 'weight: 2.2 kg', 'weight: 2.2 kg\nweight: 3 kg', ['power_per_weight', 'weight_per_area']],
])('%s: the rest is read', (_, from, to, lost) => {
  const broken = whole.replace(from, to)
  expect(broken).not.toBe(whole)
  expect(
    read(broken)
      .readFindings()
      .filter(({ severity }) => severity !== 'hint').length,
  ).toBeGreaterThan(0)
  const left = known(broken)
  expect(all.filter((id) => !left.includes(id))).toEqual(lost)
})

test('what one tab does to the lines around it is reported once', () => {
  const { readFindings } = read(whole.replace('  vmp: 18.6 V', '\tvmp: 18.6 V'))
  expect(readFindings().map(({ rule }) => rule)).toEqual(['tab-indents'])
})

test('a field holds what was typed, what it means, and where it stands', () => {
  const text = panel({ top: "weight: '4.8 lb' # with cable", size: '{ length: 1190, width: 21 1/4 in }' })
  const { record, fields, readFindings } = read(text)
  expect(readFindings()).toEqual([])
  const { weight, size } = record
  expect(weight).toMatchObject({ text: '4.8 lb', pointer: '/weight', quantity: { unit: 'lb', unitDefaulted: false } })
  expect(text.slice(weight!.span.start, weight!.span.end)).toBe("'4.8 lb'")
  expect(weight!.value).toBeCloseTo(4.8 * 0.45359237, 9) // pound: NIST SP 811, exact
  expect(size.length).toMatchObject({ text: '1190', value: 1.19, quantity: { unit: 'mm', unitDefaulted: true } })
  expect(size.width!.value).toBeCloseTo(21.25 * 0.0254, 12) // inch: NIST SP 811, exact
  expect(fields.get('/size/width')).toBe(size.width)
  expect([...fields.keys()].sort()).toEqual([
    '/format',
    '/name',
    '/size/length',
    '/size/width',
    '/stc/imp',
    '/stc/isc',
    '/stc/pmax',
    '/stc/vmp',
    '/stc/voc',
    '/weight',
  ])
})

test('lists: in brackets, in lines, and what is missing is an empty group', () => {
  const steps = '[{ years: 10, at_least: 90 % }, { years: 25, at_least: 80 % }]'
  const { warranty, certificates, noct } = read(
    panel({ top: `warranty: { output: ${steps}, exclusions: [uv] }\ncertificates:\n  - IEC 61215\n  - IEC 61730` }),
  ).record
  expect(warranty.output.map(({ years, at_least: share }) => [years?.value, share?.value])).toEqual([
    [10, 0.9],
    [25, 0.8],
  ])
  expect(warranty.output[1]?.at_least?.pointer).toBe('/warranty/output/1/at_least')
  expect(warranty.exclusions.map(({ text }) => text)).toEqual(['uv'])
  expect(certificates.map(({ text }) => text)).toEqual(['IEC 61215', 'IEC 61730'])
  expect(noct).toEqual({})
})

test('a bare price is in the currency of the library, and nothing without one', () => {
  const text = panel({ top: 'price: { amount: 289 }' })
  const priced = readFile('a.panel.yaml', text, 'EUR') as ReadFile<'panel'>
  expect(priced.record.price.amount?.quantity).toMatchObject({ value: 289, unit: 'EUR', unitDefaulted: true })
  expect(read(text).record.price.amount).toBeUndefined()
  expect(
    read(text)
      .readFindings()
      .map(({ rule }) => rule),
  ).toEqual(['missing-unit'])
})
