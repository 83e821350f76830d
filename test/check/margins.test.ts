import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { inventory } from '../../server/src/text/tree-queries.ts'

const path = 'tern-110.panel.yaml'
const original = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const lines = original.trimEnd().split('\n')

function check(text: string) {
  const library = createLibrary()
  library.put(path, text)
  const { findings, tree } = checkFile(library, path, { today: '2026-11-25' })!
  return { findings, values: inventory(tree).scalars.map((one) => `${one.pointer} ${one.text}`) }
}
const before = check(original)

const ended = (all: readonly string[]) => `${all.join('\n')}\n`
const each = (change: (line: string, number: number) => string) => ended(lines.map((line, i) => change(line, i + 1)))
/** From `pmax` to `isc` of `stc`. */
const some = (change: (line: string, number: number) => string) =>
  each((line, number) => (11 <= number && number <= 16 ? change(line, number) : line))
const voc = (as: string) => each((line) => (line === '  voc: 22.1 V' ? as : line))
const changed = each((line) => (line === '  voc: 22.1 V' ? '-  voc: 22.3 V\n+  voc: 22.1 V' : ` ${line}`))
const header =
  'diff --git a/x.panel.yaml b/x.panel.yaml\nindex 1a2b3c4..5d6e7f8 100644\n--- a/x.panel.yaml\n+++ b/x.panel.yaml\n'

const diff = 'The marks of a diff (+, @@) are not part of a record: take them out.'
const deleted =
  'The marks of a diff (+, -, @@) are not part of a record: take them out, and delete the lines that begin with -.'
const numbers = 'Line numbers are not part of a record: take them out.'
const sign = (what: string) =>
  new RegExp(String.raw`^\d+ lines begin with ${what}, which is not part of a record: take it out\.$`)

const pasted: readonly (readonly [what: string, text: string, says: string | RegExp])[] = [
  ['a diff of a new file', header + `@@ -0,0 +1,45 @@\n` + each((line) => `+${line}`), diff],
  ['a diff of a change', header + `@@ -1,45 +1,45 @@ family: Tern\n` + changed, deleted],
  ['the lines of a diff alone', changed, deleted],
  ['added lines', each((line) => `+${line}`), diff],
  ['a few added lines among others', some((line) => `+${line}`), diff],
  ['one added line', voc('+  voc: 22.1 V'), diff],
  ['a deleted and an added line', voc('-  voc: 22.3 V\n+  voc: 22.1 V'), deleted],
  ['a place of a diff', voc('@@ -12,7 +12,7 @@ stc:\n  voc: 22.1 V'), diff],
  ['a part of a diff', some((line, i) => (i === 15 ? `+${line}` : ` ${line}`)), diff],
  ['numbers', each((line, i) => `${String(i).padStart(3)}  ${line}`), numbers],
  ['numbers and tabs', each((line, i) => `${String(i).padStart(6)}\t${line}`), numbers],
  ['numbers with a colon', each((line, i) => `${i}: ${line}`), numbers],
  ['numbers with a colon alone', each((line, i) => `${i}:${line}`), numbers],
  ['numbers with a bar', each((line, i) => `${i} | ${line}`), numbers],
  ['numbers with a full stop', each((line, i) => `${i}. ${line}`), numbers],
  ['numbers before some', some((line, i) => `${i} ${line}`), numbers],
  ['a number before one', voc('15:  voc: 22.1 V'), numbers],
  ['a quoted mail', each((line) => `> ${line}`), sign('>')],
  ['a mail quoted twice', each((line) => `> > ${line}`), sign('>>')],
  ['a quoted part', some((line) => `>${line}`), sign('>')],
  ['a quoted line', voc('> voc: 22.1 V'), 'A line begins with >, which is not part of a record: take it out.'],
  ['bars', each((line) => `| ${line}`), sign(String.raw`\|`)],
  ['slashes', each((line) => `// ${line}`), sign('//')],
  [
    'every line a comment',
    each((line) => `# ${line}`),
    'Every line is a comment: remove the # from the lines that are fields.',
  ],
]

describe('what is copied along with lines is one finding, its fix takes it out, and the record is read', () => {
  test.each(pasted)('%s', (_, text, says) => {
    const known = new Set(before.findings.map(({ message }) => message))
    const { findings, values } = check(text)
    const [found, ...others] = findings.filter(({ message }) => !known.has(message))
    expect(others.map(({ message }) => message)).toEqual([])
    expect(found!.message).toMatch(says)
    expect(found!.severity).toBe('error')
    expect(found!.corrections.map(({ certainty }) => certainty)).toEqual(['guess'])
    expect(applyEdits(text, found!.corrections[0]!.edits)).toBe(original)
    expect(values).toEqual(before.values)
  })
})

test.each([
  [
    'a note',
    original.replace(/^notes: .*\n/m, 'notes: |\n  12: weight\n  13: price\n  > voc: 22.1 V\n  + isc: 6.31 A\n'),
  ],
  ['a list of numbers', original.replace('[uv, foot traffic, salt water]', '[\n    uv,\n    1 year,\n    salt water]')],
  [
    'items at the left margin',
    original.replace('output: [{ years: 5, at_least: 80 % }]', 'output:\n  - { years: 5, at_least: 80 % }'),
  ],
])('%s is no margin', (_, text) => {
  expect(text).not.toBe(original)
  expect(check(text).findings.map(({ message }) => message)).toEqual(before.findings.map(({ message }) => message))
})
