import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { applyEdits } from '../../server/src/text/span.ts'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { skeleton } from '../../server/src/records/skeleton.ts'
import { check } from './checked.ts'

const panel = `# typed by hand
format: 1
name: Tern 110
construction: flexible
cells:
  technology: mono
  in_series: 36
stc:
  pmax: 110 W
  tolerance: 0/+5 %
  vmp: 18.6 V
  imp: 5.92 A
  voc: 22.1 V
  isc: 6.31 A
size:
  length: 1190 mm
  width: 540 mm
weight: 2.2 kg
`
const boat = readFileSync('samples/systems/boat.system.yaml', 'utf8')
const flat = boat.replace(/^ {2}(?= *\S)/gm, '')

const findingsOf = (path: string, text: string) => check(text, { path }).findings

const serious = (path: string, text: string) =>
  findingsOf(path, text).filter(({ severity }) => severity === 'error' || severity === 'warning')

const beyond = (path: string, text: string, right: string) => {
  const known = serious(path, right).map(({ rule, pointer }) => `${rule} ${pointer}`)
  return serious(path, text).filter(({ rule, pointer }) => !known.includes(`${rule} ${pointer}`))
}

test.each([
  [
    'a column of one space',
    panel,
    /^ {2}tolerance/m,
    ' tolerance',
    'tolerance is indented by 1 space, its neighbours by 2.',
  ],
  ['a column too far', panel, /^ {2}vmp/m, '   vmp', 'vmp is indented by 3 spaces, its neighbours by 2.'],
  [
    'a field at the left margin',
    panel,
    /^ {2}in_series/m,
    'in_series',
    'in_series is at the left margin; it belongs under cells.',
  ],
  ['a field too far in', panel, /^weight/m, '  weight', 'weight is under size; it belongs at the left margin.'],
  [
    'a whole group at the left margin',
    panel,
    /(?<=stc:\n)(?: {2}.*\n)+/,
    (lines: string) => lines.replaceAll(/^ {2}/gm, ''),
    'pmax, tolerance and 4 more are at the left margin; they belong under stc.',
  ],
  [
    'the head of a group that is still a comment',
    panel,
    'cells:\n  technology',
    '# cells:\n  # technology',
    'in_series is indented under cells, which is still a comment.',
  ],
  [
    'a comment without its #',
    panel,
    '# typed by hand',
    'typed by hand, from the PDF',
    'This line is no field: "typed by hand, from the PDF". Make it a comment (#).',
  ],
  [
    'a list item whose size is under the dash',
    boat,
    /^ {4}size/m,
    '  size',
    'size is indented by 2 spaces, its neighbours by 4.',
  ],
  [
    'the same where the dash is at the left margin',
    flat,
    /^ {2}size/m,
    'size',
    'size is at the left margin, its neighbours are indented by 2 spaces.',
  ],
  [
    'a no-break space after a colon',
    panel,
    'vmp: 18.6',
    'vmp:\u00A018.6',
    'There is a no-break space after vmp:, as PDFs have it; YAML needs a plain one.',
  ],
  [
    'no-break spaces, soft hyphens and the like, all in one fix',
    panel,
    /vmp: 18\.6 V\n {2}imp/,
    'vmp:\u00A018.6\u202FV\n\u00A0 i\u00ADmp',
    'There is a no-break space after vmp:, as PDFs have it; YAML needs a plain one. 3 more in this file.',
  ],
  [
    'a field without its colon',
    panel,
    'voc: 22.1 V',
    'voc 22.1 V',
    'The colon after voc is missing: write voc: 22.1 V.',
  ],
] as const)('%s is one finding, and its fix puts the file right', (_, right, from, to, message) => {
  const path = right === panel ? 'tern-110.panel.yaml' : 'boat.system.yaml'
  const text = right.replace(from, to as string)
  expect(text).not.toBe(right)
  const found = beyond(path, text, right)
  expect(found.map((one) => one.message)).toEqual([message])
  const fixed = applyEdits(text, found[0]!.corrections[0]!.edits)
  expect(beyond(path, fixed, right)).toEqual([])
  if (!message.includes('no field') && !message.includes('comment')) expect(fixed).toBe(right)
})

test('the first line of a form that lost its # is one finding, whatever is below it', () => {
  const form = skeleton(schemas.panel!).replace(/^# /, '')
  const [first, ...others] = findingsOf('new.panel.yaml', form)
  expect(first!.message).toMatch(/^This line is no field: "Panel record[.]/)
  expect(others.map(({ severity, message }) => [severity, message])).toEqual([
    ['information', expect.stringMatching(/^Still to be filled in: name/)],
  ])
})

test.each(['panel', 'controller', 'battery', 'climate', 'system', 'library'] as const)(
  'the form of a %s is made of comments that an editor toggles: indent first, then "# "',
  (kind) => {
    const lines = skeleton(schemas[kind]!).split('\n').slice(3)
    const fields = lines.map((line) => /^( *)(# )?(- )?([\w]+:|\S+).*$/.exec(line))
    for (const [i, line] of lines.entries()) if (line !== '') expect(fields[i], line).not.toBeNull()
    expect(lines.filter((line) => /^ *#\S/.test(line))).toEqual([])
  },
)
