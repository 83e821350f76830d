import { readFileSync, readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { applyEdits } from '../../server/src/text/span.ts'

const library = createLibrary()
for (const folder of [
  'samples/library/panels',
  ...['', '/batteries', '/climates', '/controllers', '/panels'].map((one) => `samples/systems${one}`),
])
  for (const name of readdirSync(folder).filter((one) => one.endsWith('.yaml')))
    library.put(`${folder}/${name}`, readFileSync(`${folder}/${name}`, 'utf8'))

const boat = 'samples/systems/boat.system.yaml'
const tern = 'samples/library/panels/tern-110.panel.yaml'
const found = (path: string, text: string) => {
  const original = readFileSync(path, 'utf8')
  library.put(path, text)
  const { findings } = checkFile(library, path, { today: '2026-11-25' })!
  library.put(path, original)
  return findings
}
const known = new Map(
  [boat, tern].map((path) => [path, new Set(found(path, readFileSync(path, 'utf8')).map(({ message }) => message))]),
)

const curly = (where: string, more: string) =>
  `There is a curly quote ${where}, as PDFs have it; ${more} 1 more in this file.`
const stop = 'other tools stop at it.'
const letter = 'YAML takes it for a letter.'

test.each<[path: string, right: string, typed: string, says: string | RegExp, severity: string]>([
  [tern, 'name: Tern 110', 'name: “Tern 110”', curly('after name:', stop), 'hint'],
  [tern, 'voc: 22.1 V', 'voc: “22.1 V”', curly('after voc:', stop), 'hint'],
  [tern, 'voc: 22.1 V', 'voc: „22.1 V“', curly('after voc:', stop), 'hint'],
  [tern, 'voc: 22.1 V', 'voc: ‘22.1 V’', curly('after voc:', stop), 'hint'],
  [tern, 'voc: 22.1 V', 'voc: «22.1 V»', curly('after voc:', stop), 'hint'],
  [tern, 'typed_by: ab', 'typed_by: “ab”', curly('after typed_by:', stop), 'hint'],
  [tern, '  voc: 22.1', '  “voc”: 22.1', curly('at the start of a line', letter), 'error'],
  [tern, 'voc: 22.1', 'voc：22.1', `There is a wide colon after voc, as PDFs have it; ${letter}`, 'error'],
  [tern, '{ length: ', '{ length： ', `There is a wide colon after length, as PDFs have it; ${letter}`, 'error'],
  [
    tern,
    'voc: 22.1 V',
    'voc: 22.1 V\u200e',
    `There is an invisible character after V, as PDFs have it; ${stop}`,
    'hint',
  ],
  [
    tern,
    'voc: 22.1 V',
    'voc: \u202a22.1 V',
    `There is an invisible character after voc:, as PDFs have it; ${stop}`,
    'hint',
  ],
  [tern, 'voc: 22.1 V', 'voc: 22\0.1 V', `There is an invisible character after 22, as PDFs have it; ${stop}`, 'hint'],
  [
    tern,
    'around it.\n',
    'around it.\n\0\0\0',
    /^There is an invisible character at the start of a line.* 2 more/,
    'error',
  ],
  [tern, 'maker: Ex', 'maker: @Ex', /^YAML keeps the sign at the beginning of @Ex/, 'error'],
  [tern, 'typed_by: ab', 'typed_by: @ab', /^YAML keeps the sign at the beginning of @ab/, 'error'],
  [tern, 'model: Tern 110', 'model: "C:\\Users"', /^\\ means nothing in double quotes/, 'error'],
  [
    tern,
    'notes: Junction',
    "notes: 'It's a junction",
    /cannot read what follows the closing quote\. Write It's a junction.*[^.]\.$/,
    'error',
  ],
  [tern, '[IEC 61215, IEC 61730]', '(IEC 61215, IEC 61730)', /a list is expected/, 'error'],
  [tern, '[IEC 61215, IEC 61730]', '\n  IEC 61215\n  IEC 61730', /a list is expected/, 'error'],
  [
    tern,
    '[IEC 61215, IEC 61730]',
    '\n  - IEC 61215\n  -IEC 61730',
    'A space is missing after the dash before IEC 61730.',
    'error',
  ],
  [
    tern,
    'output: [{ years: 5, at_least: 80 % }]',
    'output: { years: 5, at_least: 80 % }',
    /a list is expected/,
    'error',
  ],
  [tern, 'bifacial: false', 'bifacial: False', 'bifacial is "False"; true or false is expected.', 'error'],
  [tern, 'typed_on: 2026-10-05', 'typed_on: 5.10.2026', /is not written as year-month-day/, 'warning'],
  [tern, 'typed_on: 2026-10-05', 'typed_on: 5 Oct 2026', /is not written as year-month-day/, 'warning'],
  [
    boat,
    'panels: [{ panel: puffin-115, count: 2, surface: coachroof }]',
    'panels: { panel: puffin-115, count: 2, surface: coachroof }',
    /a list is expected/,
    'error',
  ],
  [
    boat,
    'battery: example-lfp-100\n',
    'battery: example-lfp-100.battery.yaml\n',
    /did you mean example-lfp-100\?$/,
    'error',
  ],
  [
    boat,
    'battery: example-lfp-100\n',
    'battery: batteries/example-lfp-100.battery\n',
    /did you mean example-lfp-100\?$/,
    'error',
  ],
])('%s: %j as %j is one finding, and nothing is found after its fix', (path, right, typed, says, severity) => {
  const original = readFileSync(path, 'utf8')
  const text = original.replace(right, typed)
  expect(text).not.toBe(original)
  const [first, ...others] = found(path, text).filter(({ message }) => !known.get(path)!.has(message))
  expect(others.map(({ message }) => message)).toEqual([])
  expect(first!.message).toMatch(says)
  expect(first!.severity).toBe(severity)
  const fixed = applyEdits(text, first!.corrections[0]!.edits)
  expect(found(path, fixed).filter(({ message }) => !known.get(path)!.has(message))).toEqual([])
})

test.each([
  ['maker: Example Panel Works', 'maker: The “Big” Works'],
  ['maker: Example Panel Works', 'maker: “Big” Works of ’t Hof'],
  ['notes: Junction box', 'notes: Junction box (“upper”)'],
  ['name: Tern 110', 'name: "“Tern” 110"'],
])('quotes that are a part of a text stay: %j as %j', (right, typed) => {
  const text = readFileSync(tern, 'utf8').replace(right, typed)
  expect(found(tern, text).filter(({ message }) => !known.get(tern)!.has(message))).toEqual([])
})

test.each([
  ['typed_on: 2026-10-05', 'typed_on: 05/10/2026'],
  ['typed_on: 2026-10-05', 'typed_on: 31.2.2026'],
])('a date that may be two days, or none, has no fix: %j as %j', (right, typed) => {
  const all = found(tern, readFileSync(tern, 'utf8').replace(right, typed))
  expect(all.filter(({ rule }) => rule === 'wrong-text').map(({ corrections }) => corrections)).toEqual([[]])
})

test('a record in Latin-1 is one finding, whatever its signs were', () => {
  const text = readFileSync(tern, 'utf8').replaceAll(/[^\x00-\x7f]/g, '\ufffd')
  const errors = found(tern, text).filter(({ severity }) => severity === 'error')
  expect(errors.map(({ rule }) => rule)).toEqual(['not-utf-8'])
})

test('a time that YAML 1.1 would count by sixties is one finding', () => {
  const text = readFileSync(boat, 'utf8').replace('hours: 4, supply', 'hours: 4:30, supply')
  const rules = found(boat, text)
    .filter(({ message }) => !known.get(boat)!.has(message))
    .map(({ rule }) => rule)
  expect(rules).toEqual(['number-two-readings'])
})

test.each([
  ['%PDF-1.7\n%\ufffd\ufffd\n1 0 obj\n<< /Type /Catalog >>\nendobj\n', 'a PDF'],
  ['PK\x03\x04\x14\0\0\0\b\0\ufffd', 'an archive or an office document'],
  ['{\\rtf1\\ansi Voc: 22.1 V\\par}', 'a document of a word processor'],
  ['<!DOCTYPE html>\n<html><p>voc: 22.1 V</p></html>\n', 'a web page'],
  ['\ufffdPNG\r\n\x1a\n\0\0', 'a picture'],
  ['\x01\x02voc: 22.1 V\x03\x04\x05', 'something other than text'],
])('%j is one finding without a fix', (text, what) => {
  const all = found(tern, text)
  expect(all.map(({ message }) => message)).toEqual([`The file is ${what}, not a record, and was not read.`])
  expect(all[0]!.corrections).toEqual([])
})
