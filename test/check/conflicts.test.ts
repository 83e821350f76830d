import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { applyEdits } from '../../server/src/text/span.ts'
import { check } from './checked.ts'

const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const [first, base, middle, last] = ['<<<<<<< HEAD\n', '||||||| base\n', '=======\n', '>>>>>>> other\n']
const weighs = (kilograms: string) => `weight: ${kilograms} kg\n`
const typed = weighs('2.2')

/** The sample with other lines in place of its weight. */
function inPlace(...lines: readonly string[]): string {
  expect(tern).toContain(typed)
  return tern.replace(typed, lines.join(''))
}

const conflict = (one: string, other: string) => [first, one, middle, other, last].join('')
const manyConflicts = (count: number) =>
  tern + Array.from({ length: count }, () => conflict('# one\n', '# other\n')).join('')

test.each([
  [20, 20, 'Git left two versions here: # one or # other. Keep one.', 2],
  [21, 1, 'Git left 21 conflicts in this file, the first of them here. Keep one version of each.', 0],
  [1000, 1, 'Git left 1000 conflicts in this file, the first of them here. Keep one version of each.', 0],
])('%i conflicts are %i findings', (count, findings, message, fixes) => {
  const { findings: found } = check(manyConflicts(count))
  expect(found).toHaveLength(findings)
  expect(found[0]).toMatchObject({ message, severity: 'error', span: { start: tern.length } })
  expect(found[0]!.corrections).toHaveLength(fixes)
})

describe('a conflict says where its versions differ, and no field is missing that one of them has', () => {
  const stc = /^stc:.*\n(?: .*\n)+/m.exec(tern)![0]
  const without = (line: string) => stc.replace(line, '')
  test.each([
    ['in the middle', stc, stc.replace('22.1 V', '22.2 V'), 'voc: 22.1 V or voc: 22.2 V'],
    ['in a line that only the second has', without('  voc: 22.1 V\n'), stc, 'nothing or voc: 22.1 V'],
    ['in a line that only the first has', stc, without('  voc: 22.1 V\n'), 'voc: 22.1 V or nothing'],
    ['in two places', stc, stc.replace('110 W', '111 W').replace('22.1 V', '22.2 V'), 'pmax: 110 W or pmax: 111 W'],
    ['in blanks alone', stc, stc.replace('pmax: 110', 'pmax:  110'), 'pmax: 110 W or pmax:  110 W'],
  ])('%s', (_, one, other, versions) => {
    const text = tern.replace(stc, conflict(one, other))
    const [found, ...others] = check(text).findings
    expect(others).toEqual([])
    expect(found!.message).toBe(`Git left two versions here: ${versions}. Keep one.`)
    expect(found!.corrections.map(({ edits }) => applyEdits(text, edits))).toEqual(
      [one, other].map((version) => tern.replace(stc, version)),
    )
  })
})

describe('markers that do not pair up are one finding without a fix', () => {
  test.each([
    ['one in the first version', [first, first, typed, middle, weighs('2.3'), last, middle, weighs('2.4'), last]],
    ['one in the second version', [first, typed, middle, first, weighs('2.3'), middle, weighs('2.4'), last, last]],
    ['one below other lines', [first, '# a\n', first, typed, middle, weighs('2.3'), last, middle, weighs('2.4'), last]],
    ['three versions', [first, typed, middle, weighs('2.3'), middle, weighs('2.4'), last]],
    ['no end', [first, typed, middle, weighs('2.3')]],
    ['no end, with what both began as', [first, typed, base, weighs('2.1'), middle, weighs('2.3')]],
    ['nothing between the versions', [first, typed, weighs('2.3'), last]],
    ['no beginning', [typed, middle, weighs('2.3'), last]],
  ])('%s', (_, lines) => {
    const text = inPlace(...lines)
    const [found, ...others] = check(text).findings
    expect(others).toEqual([])
    expect(found).toMatchObject({
      message: 'The markers of a git conflict do not pair up from here on: keep one version, and take the markers out.',
      span: { start: text.search(/^[<=]{7}/m) },
      corrections: [],
    })
  })

  test('a conflict elsewhere keeps its own', () => {
    const text = inPlace(first, typed, middle, weighs('2.3')).replace('format:', `${conflict('# a\n', '# b\n')}format:`)
    expect(check(text).findings.map(({ corrections }) => corrections.length)).toEqual([2, 0])
  })
})

test.each([
  ['the beginning', [first, typed]],
  ['the middle', [middle, typed]],
  ['the end', [typed, last]],
  ['the middle twice', [middle, typed, middle]],
  ['two together', [middle, last, typed]],
])('%s that was left over is taken out', (_, lines) => {
  const text = inPlace(...lines)
  const [found, ...others] = check(text).findings
  expect(others).toEqual([])
  expect(applyEdits(text, found!.corrections[0]!.edits)).toBe(tern)
})

describe('lines of a text are no markers', () => {
  const said = (name: string) => check(`{ name: ${name} }\n`).findings.map(({ message }) => message)
  test.each(['"a\n=======\nb"', "'a\n>>>>>>> b\nc'", 'a\n=======\nb', '"a\n```\nb"', "'a\n```yaml\nb'"])(
    '%j',
    (name) => {
      expect(said(name)).toEqual(said('a b'))
    },
  )
})

test('in JSON they are, where they would begin a name', () => {
  const found = check('{\n  "name": "a",\n=======\n  "notes": "b"\n}\n').findings
  expect(found.map(({ message }) => message)).toContain('A marker of a git conflict was left here: take the line out.')
})

test.each([
  ['markers', conflict('# a\n', '# b\n')],
  ['the marks of a code block', '```yaml\n'],
])('%s behind a byte order mark', (_, lines) => {
  const text = `\ufeff${lines}${tern}`
  const [found, ...others] = check(text).findings
  expect(others).toEqual([])
  expect(found!.span.start).toBe(1)
  expect(applyEdits(text, found!.corrections[0]!.edits)).toMatch(/^\ufeff(?:# a\n)?# The exemplary/)
})

test('the marks of a code block in a version that is not kept', () => {
  const { findings } = check(inPlace(conflict(typed, `\`\`\`\n${weighs('2.3')}`)))
  expect(findings.map(({ corrections }) => corrections.length)).toEqual([2, 0])
})

describe('while a conflict is open', () => {
  const voc = '  voc: 22.1 V\n'

  test('nothing is moved into one of its versions, or changed in it', () => {
    const moved = tern.replace(voc, '').replace(typed, `voc: 22.1 V\n${typed}`)
    const stc = /^stc:.*\n(?: .*\n)+/m.exec(moved)![0]
    const text = moved.replace(stc, conflict(stc, stc.replace('5.92 A', '5,93 A')))
    const fixesOf = (one: string) =>
      check(one).findings.flatMap(({ rule, corrections }) => (rule === 'misplaced-field' ? corrections : []))
    expect(fixesOf(moved)).not.toEqual([])
    expect(fixesOf(text)).toEqual([])
  })

  test.each([
    ['in it', (size: string) => conflict(size, '# none\n'), []],
    ['above it', (size: string) => size + conflict('# a\n', '# b\n'), ['a decimal point']],
    ['below it', (size: string) => conflict('# a\n', '# b\n') + size, ['a decimal point']],
  ])('a comma %s', (_, lines, fixes) => {
    const text = tern.replace(/^size:.*\n/m, (size) => lines(size.replace('540 mm', '540,5 mm')))
    const found = check(text).findings.find(({ rule }) => rule === 'decimal-comma-splits')
    expect(found!.corrections.map(({ why }) => why)).toEqual(fixes)
  })

  test.each([
    ['in it', conflict('weight: 2.2 kg # accept weight-missing: none\n', weighs('2.3'))],
    ['of a field in it', `# accept weight-missing: none\n${conflict(typed, weighs('2.3'))}`],
  ])('an acceptance %s may still be needed', (_, lines) => {
    const rules = (text: string) => check(text).findings.map(({ rule }) => rule)
    expect(rules(inPlace('weight: 2.2 kg # accept weight-missing: none\n'))).toEqual(['acceptance-unused'])
    expect(rules(inPlace(lines))).toEqual(['yaml-syntax'])
  })
})
