import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { phraseInWords } from '../../server/src/wording/phrase.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { inventory } from '../../server/src/text/tree-queries.ts'

const boat = readFileSync('samples/systems/boat.system.yaml', 'utf8')
const values = (text: string) => inventory(readTree(text)).scalars.map(({ pointer, text: own }) => `${pointer} ${own}`)
const typed = new Set(values(boat))

/** A sample with one place typed in another way, what is said of it, and how many of its values are not read as before. */
const cases = [
  {
    what: 'a comma left out',
    from: 'supply: ac, months: [5',
    to: 'supply: ac months: [5',
    says: ['A comma is missing before months: inside { } and [ ] commas separate the fields.'],
    fixed: 'supply: ac, months: [5',
    lost: 0,
  },
  {
    what: 'a brace left out',
    from: '- { name: fridge',
    to: '- name: fridge',
    says: ['} closes a bracket that was never opened: take it out, or open it.'],
    lost: 10,
  },
  {
    what: 'a line break inside of brackets',
    from: 'in_series: 2, in_parallel',
    to: 'in_series: 2,\n    in_parallel',
    says: ['The brackets of the line above are still open at in_parallel: indent it further than that line.'],
    lost: 0,
  },
  {
    what: 'a line break inside of brackets that goes on further in',
    from: 'in_series: 2, in_parallel',
    to: 'in_series: 2,\n      in_parallel',
    says: [],
    lost: 0,
  },
  {
    what: 'a letter in front of a name, in the wrong column',
    from: '\n    mounting: standoff',
    to: '\n   1 mounting: standoff',
    says: ['1 mounting is indented by 3 spaces, its neighbours by 4.'],
    lost: 1,
  },
  {
    what: 'a tab for the spaces of a line',
    from: '\n    shading: 20',
    to: '\n\tshading: 20',
    says: ['A tab is where YAML counts spaces: use spaces.'],
    lost: 0,
  },
  {
    what: 'a tab behind spaces',
    from: '\n    shading: 20',
    to: '\n  \tshading: 20',
    says: ['A tab is where YAML counts spaces: use spaces.'],
    lost: 0,
  },
  {
    what: 'a dash left out',
    from: '  - { name: lights',
    to: '  { name: lights',
    says: [/^\{ name: lights.* is in a list without the dash that begins an item\.$/],
    lost: 0,
  },
  {
    what: 'the dash of the first group of a list left out',
    from: '  - id: bimini\n    size',
    to: '    id: bimini\n    size',
    says: ['id: bimini is in a list without the dash that begins an item.'],
    lost: 0,
  },
  {
    what: 'a letter beside the dash',
    from: '  - { name: lights',
    to: '  -2 { name: lights',
    says: [/^-2 \{ name: lights.* is in a list without the dash that begins an item\.$/],
    lost: 0,
  },
  {
    what: 'a name with a full stop for its colon',
    from: 'tilt: 0 deg\n    curvature: 20',
    to: 'tilt. 0 deg\n    curvature: 20',
    says: [/has no colon after it/],
    lost: 1,
  },
  {
    what: 'a quote left open',
    from: 'name: hatch',
    to: 'name: "hatch',
    says: [/is not closed on its line/],
    fixed: 'name: "hatch"',
    lost: 5,
  },
  {
    what: 'a quote left open on a line of its own',
    from: 'id: coachroof\n    size',
    to: 'id: "coachroof\n    size',
    says: [/is not closed on its line/],
    fixed: 'id: "coachroof"\n    size',
    lost: 0,
  },
  {
    what: 'two commas left out',
    from: 'x: 1200 mm, y: 560 mm, length: 600 mm',
    to: 'x: 1200 mm y: 560 mm length: 600 mm',
    says: ['A comma is missing before y and length: inside { } and [ ] commas separate the fields.'],
    fixed: 'x: 1200 mm, y: 560 mm, length: 600 mm',
    lost: 0,
  },
  {
    what: 'a brace left open at the end',
    from: 'width: 1.3 m }',
    to: 'width: 1.3 m',
    says: ['size: { length: 2.3 m, width: 1.3 m lacks its }.'],
    fixed: 'width: 1.3 m }',
    lost: 0,
  },
  {
    what: 'a brace left open inside of another bracket',
    from: 'surface: bimini }]',
    to: 'surface: bimini ]',
    says: [/^panels: \[\{ panel: .* lacks its \}\.$/],
    fixed: 'surface: bimini }]',
    lost: 0,
  },
  {
    what: 'two brackets left open at the end',
    from: 'surface: bimini }]',
    to: 'surface: bimini',
    says: [/^panels: \[\{ panel: .* lacks its \}\]\.$/],
    fixed: 'surface: bimini }]',
    lost: 0,
  },
  {
    what: 'two lines in one',
    from: '\n    mounting: canvas',
    to: ' mounting: canvas',
    says: ['mounting needs a line of its own.'],
    fixed: '\n    mounting: canvas',
    lost: 0,
  },
  {
    what: 'two lines in one, the second further out and without a blank',
    from: '33 °C }\nsurfaces:',
    to: '33 °C }surfaces:',
    says: ['surfaces needs a line of its own.'],
    fixed: '33 °C }\nsurfaces:',
    lost: 0,
  },
  {
    what: 'a dash that touches its name',
    from: '  - id: coachroof\n    size',
    to: '  -id: coachroof\n    size',
    says: ['A space is missing after the dash before id.'],
    fixed: '  - id: coachroof\n    size',
    lost: 0,
  },
  {
    what: 'a value above the list that is meant',
    from: 'surfaces:',
    to: 'surfaces: 3',
    says: ['surfaces has both the value 3 and what is indented below it.'],
    fixed: 'surfaces:',
    lost: 0,
  },
  {
    what: 'a value without a space above the list that is meant',
    from: 'surfaces:',
    to: 'surfaces:3',
    says: ['surfaces has both the value 3 and what is indented below it.'],
    fixed: 'surfaces:',
    lost: 0,
  },
]

describe('one slip in a system costs one complaint, and the rest is read', () => {
  test.each(cases)('$what', ({ from, to, says, lost, fixed }) => {
    expect(boat).toContain(from)
    const text = boat.replace(from, to)
    const { problems } = readTree(text)
    if (fixed) expect(applyEdits(text, problems[0]!.fix!.edits)).toBe(boat.replace(from, fixed))
    expect(problems.map(({ sentence, message }) => (sentence ? phraseInWords(sentence) : message))).toEqual(
      says.map((words) => (typeof words === 'string' ? words : expect.stringMatching(words))),
    )
    const read = new Set(values(text))
    expect([...typed].filter((value) => !read.has(value)).length).toBeLessThanOrEqual(lost)
  })
})

test('two lines in one of a file with CR LF are parted by CR LF', () => {
  const text = boat.replaceAll('\n', '\r\n')
  const [problem] = readTree(text.replace('\r\n    mounting: canvas', ' mounting: canvas')).problems
  expect(applyEdits(text.replace('\r\n    mounting: canvas', ' mounting: canvas'), problem!.fix!.edits)).toBe(text)
})

test('lines that end with a carriage return alone are one complaint, and all is read', () => {
  const text = boat.replaceAll('\n', '\r')
  const { problems } = readTree(text)
  expect(problems.map(({ code }) => code)).toEqual(['lone-return'])
  expect(applyEdits(text, problems[0]!.fix!.edits)).toBe(boat)
  expect(values(text)).toEqual(values(boat))
})

test('lines in wrong columns each have their own complaint, and the rest is read', () => {
  const text = boat
    .replace('    mounting: standoff', '   mounting: standoff')
    .replace('    controller: example-mppt-30\n', '     controller: example-mppt-30\n')
    .replace('  - { name: lights', '  { name: lights')
    .replace('  autonomy', ' autonomy')
  const { problems } = readTree(text)
  expect(problems.map(({ sentence }) => sentence && phraseInWords(sentence))).toEqual([
    'mounting is indented by 3 spaces, its neighbours by 4.',
    'controller is indented by 5 spaces, its neighbours by 4.',
    'autonomy is indented by 1 space, its neighbours by 2.',
    expect.stringMatching(/is in a list without the dash/),
  ])
  expect(values(text)).toEqual(values(boat))
})

test('each of several broken lines has its own complaint', () => {
  const text = boat.replaceAll(', supply: dc,', ' supply: dc,')
  const { problems, effort } = readTree(text)
  expect(text.split('\n').filter((line) => line.includes(' supply: dc,')).length).toBe(problems.length)
  expect(effort).toBe(0)
})

test('the more is broken, the less of it is tried: the whole grammar reads no more than so much', () => {
  const text = boat
    .split('\n')
    .map((line, i) => (i % 3 === 2 ? ` ${line}` : line.replace(' { ', ' ')))
    .join('\n')
  const mostOnce = 9 * text.length
  expect(readTree(text).effort).toBeLessThan(96 * 1024 + 2 * mostOnce)
})

test('a field that lost its colon is no comment because one stands behind it', () => {
  const { problems } = readTree('format: 1\nkind boat # boat | vehicle | cabin\nsite: {}\n')
  expect(problems.filter(({ code }) => code === 'stray-text')).toEqual([])
})
