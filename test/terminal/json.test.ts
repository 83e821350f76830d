import { Ajv2020 } from 'ajv/dist/2020.js'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { scratch, wattproof } from './run.ts'

const schema = JSON.parse(readFileSync('schemas/check-output.schema.json', 'utf8'))
const json = (args: readonly string[], cwd: string) =>
  JSON.parse(wattproof(['check', '--format', 'json', ...args], { cwd }).out)

test.each(['samples/library', 'samples/mistakes', 'samples'])('the document of %s is as its schema says', (folder) => {
  const validate = new Ajv2020({ allErrors: true }).compile(schema)
  const document = json([folder], '.')
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true)
  expect(document.files.length).toBeGreaterThan(12)
})

test('an empty run prints a document too', () => {
  expect(json([], scratch())).toEqual({
    version: 1,
    files: [],
    summary: { files: 0, error: 0, warning: 0, information: 0, hint: 0 },
  })
})

test('places are counted from 0 in UTF-16 units', () => {
  const text = bad.replace('stc: {', 'stc: { "𝄞": 1, ') // one character, two units
  const { files } = json([], scratch({ 'a.panel.yaml': text }))
  const finding = files[0].findings.find((f: { field: string }) => f.field === '/stc/voc')
  const line = text.split('\n')[2] as string
  expect(finding.range).toEqual({
    start: { line: 2, character: line.indexOf('2.21 V') },
    end: { line: 2, character: line.indexOf('2.21 V') + 6 },
  })
})

test('a byte order mark moves no place, as in an editor', () => {
  const places = (text: string) =>
    json([], scratch({ 'a.panel.yaml': text })).files[0].findings.map((f: { range: unknown }) => f.range)
  expect(places(`\uFEFF${bad}`)).toEqual(places(bad))
})

test('a fingerprint stays while lines move, and differs by place and text', () => {
  const prints = (name: string, text: string) =>
    json([], scratch({ [name]: text, 'wattproof.yaml': 'format: 1\n' })).files[0].findings.map(
      (f: { fingerprint: string }) => f.fingerprint,
    )
  const first = prints('a.panel.yaml', bad)
  expect(prints('a.panel.yaml', `# a comment\n\n${bad}`)).toEqual(first)
  expect(new Set(first).size).toBe(first.length)
  expect(prints('b.panel.yaml', bad)).not.toEqual(first)
  expect(prints('a.panel.yaml', bad.replace('2.21 V', '2.22 V'))).not.toEqual(first)
})

test('the order of files and findings does not hang on threads or on the order of the arguments', () => {
  const cwd = scratch(
    Object.fromEntries(Array.from({ length: 30 }, (_, i) => [`p${i % 7}/${i}.panel.yaml`, i % 3 ? bad : good])),
  )
  const plain = wattproof(['check', '--format', 'json', '--jobs', '1'], { cwd }).out
  expect(wattproof(['check', '--format', 'json', '--jobs', '3'], { cwd }).out).toBe(plain)
  const folders = ['p6', 'p2', 'p0', 'p1', 'p3', 'p5', 'p4', 'p2']
  expect(wattproof(['check', '--format', 'json', ...folders], { cwd }).out).toBe(plain)
})
