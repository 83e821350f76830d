import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { inventory } from '../../server/src/text/tree-queries.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { sampleLibrary } from './sample-library.ts'

const library = sampleLibrary()

const boat = 'samples/systems/boat.system.yaml'
const tern = 'samples/library/panels/tern-110.panel.yaml'

function check(path: string, text: string) {
  library.put(path, text)
  const { findings, tree } = checkFile(library, path, { today: '2026-11-25' })!
  return { findings, values: inventory(tree).scalars.map((one) => `${one.pointer} ${one.text}`) }
}
const asTyped = new Map([boat, tern].map((path) => [path, readFileSync(path, 'utf8')]))
const before = new Map([boat, tern].map((path) => [path, check(path, asTyped.get(path)!)]))

/** What was typed in place of what the sample has, and what is said of it. */
const slips: readonly (readonly [path: string, right: string, typed: string, says: string | RegExp])[] = [
  [boat, '  - id: bimini\n    size', '-id: bimini\n    size', 'A space is missing after the dash before id.'],
  [boat, '  - id: coachroof\n    size', '-id: coachroof\n    size', 'A space is missing after the dash before id.'],
  [boat, '  - id: bimini\n    panels', ' -id: bimini\n    panels', 'A space is missing after the dash before id.'],
  [boat, '  - id: bimini\n    size', 'id: bimini\n    size', /is in a list without the dash/],
  [boat, '  - id: coachroof\n    size', '  * id: coachroof\n    size', /begins with a hyphen \(-\), not with \*\.$/],
  [boat, '  - id: coachroof\n    size', '  – id: coachroof\n    size', /begins with a hyphen \(-\), not with –\.$/],
  [boat, '  - id: coachroof\n    size', '  - - id: coachroof\n    size', /^Two dashes make a list/],
  [boat, 'surfaces:\n  - id: bimini', 'surfaces:  - id: bimini', '- id: bimini needs a line of its own.'],
  [boat, 'loads:\n  - {', 'loads: - {', /needs a line of its own\.$/],
  [boat, 'shading: 10 %\n  - id', 'shading: 10 % - id', '- id: coachroof needs a line of its own.'],
  [boat, ' }\n  - { name: laptop', ' } - { name: laptop', /needs a line of its own\.$/],
  [boat, 'walked_on: false\narrays:', 'walked_on: falsearrays:', 'arrays needs a line of its own.'],
  [boat, 'battery:\n  battery', 'battery: battery', 'battery needs a line of its own.'],
  [boat, 'autonomy: 2 days\n  fuse', 'autonomy: 2 days fuse', 'fuse needs a line of its own.'],
  [boat, 'surfaces:\n', 'surfaces\n', /^The colon after surfaces is missing/],
  [boat, 'surfaces:\n', 'surfaces;\n', /^The colon after surfaces is missing/],
  [boat, '- { name: lights', '- name: lights', /lacks its \{\.$/],
  [boat, 'inverter:', '=======\n>>>>>>> other\ninverter:', /^Markers of a git conflict were left here/],
  [
    boat,
    '    shading: 20 %\n',
    '<<<<<<< HEAD\n    shading: 20 %\n=======\n    shading: 25 %\n>>>>>>> other\n',
    'Git left two versions here: shading: 20 % or shading: 25 %. Keep one.',
  ],
  [
    boat,
    'limits: { weight: 20 kg, budget: 5000 USD }\n',
    '<<<<<<< HEAD\nlimits: { weight: 20 kg, budget: 5000 USD }\n||||||| base\n=======\n>>>>>>> other\n',
    'Git left two versions here: limits: { weight: 20 kg, budget: 5000... or nothing. Keep one.',
  ],
  [boat, 'loads:\n  - {', 'loads:- {', /needs a line of its own\.$/],
  [tern, 'width: 540 mm,', 'width: 540 mm },', '} closes too early: thickness is inside, too. Take it out.'],
  [tern, 'revision: B,', 'revision: B, }', '} closes too early: typed_by is inside, too. Take it out.'],
  [tern, 'length: 1190 mm,', 'length: 1190 mm },', '} closes too early: width is inside, too. Take it out.'],
  [tern, '  imp: 5.92 A\n  voc', '  imp: 5.92 A  voc', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc', '  imp: 5.92 A; voc', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc', '  imp: 5.92 Avoc', 'voc needs a line of its own.'],
  [tern, ' A\n  voc: 22.1 V\n  isc', ' A  voc: 22.1 V  isc', 'voc and isc need lines of their own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp: 5.92 A  voc:', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp: 5.92 A; voc:', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp:5.92 A, voc:', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp: 5.92 A / voc: ', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp: 5.92 A - voc: ', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp: 5.92 A and voc: ', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp = 5.92 A voc = ', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp: 5.92 A voc ', 'voc needs a line of its own.'],
  [tern, '  imp: 5.92 A\n  voc: ', '  imp 5.92 A voc: ', 'voc needs a line of its own.'],
  [tern, ' A\n  voc: 22.1 V\n  isc: ', ' A, voc:22.1 V isc:', 'voc and isc need lines of their own.'],
  [tern, '2.5 mm }\nweight: ', '2.5 mm }, weight:', 'weight needs a line of its own.'],
  [tern, 'Panel Works\nfamily: ', 'Panel Works family:', 'family needs a line of its own.'],
  [tern, 'bifacial: false\nsurface: ', 'bifacial: false surface:', 'surface needs a line of its own.'],
  [boat, 'mounting: standoff\n    tilt: ', 'mounting: standoff tilt:', 'tilt needs a line of its own.'],
  [boat, 'series: 1\n  in_parallel: ', 'series: 1, in_parallel:', 'in_parallel needs a line of its own.'],
  [tern, '1190 mm, width: ', '1190 mm width:', /^A comma is missing before width/],
  [tern, '1190 mm, width: ', '1190 mm width ', /^A comma is missing before width/],
  [tern, '1190 mm, width', '1190 mm,, width', 'A comma is here with nothing in front of it: take one out.'],
  [tern, '1190 mm, width', '1190 mm, { width', '{ opens a second group inside the first: take it out.'],
  [
    tern,
    '{ length: 1190 mm, width: 540 mm, thickness: 2.5 mm }',
    '[ length: 1190 mm, width: 540 mm, thickness: 2.5 mm ]',
    'Fields on one line go in { }, not in [ ].',
  ],
  [tern, '  imp: 0.01 %/°C\nnoct:', '  imp: 0.01 %/°C noct:', 'noct needs a line of its own.'],
  [tern, 'Panel Works\nfamily', 'Panel Works family', 'family needs a line of its own.'],
  [tern, 'coefficients:\n  pmax', 'coefficients: pmax', 'pmax needs a line of its own.'],
  [tern, '  voc: 22.1 V', '  - voc: 22.1 V', /take out its dash\.$/],
  [tern, '  voc: 22.1 V', '  voc:\n22.1 V', '22.1 V belongs to the value of the line above.'],
  [tern, '  voc: 22.1 V', '  voc: 22.1\nV', 'V belongs to the value of the line above.'],
  [tern, 'upper face; leave', 'upper face;\nleave', /belongs to the value of the line above\.$/],
  [tern, '2.5 mm }', '2.5 mm }}', /closes a bracket that was never opened/],
  [tern, '2.5 mm }', '2.5 mm ]', /^A \{ is still open before \]/],
  [tern, 'salt water]', 'salt water}', /^A \[ is still open before \}/],
  [tern, 'size: { length', 'size: length', /lacks its \{\.$/],
  [
    tern,
    '{ length: 1190 mm, width: 540 mm, thickness: 2.5 mm }',
    'length: 1190 mm, width: 540 mm, thickness: 2.5 mm',
    /lacks its \{ \}\.$/,
  ],
  [tern, 'output: [{', 'output: {', /^output: .* lacks its \[\.$/],
  [tern, 'output: [{ years', 'output: [years', /^output: .* lacks its \{\.$/],
  [
    boat,
    'months: [5, 6, 7, 8, 9] }\n  - { name: laptop',
    'months: 5, 6, 7, 8, 9] }\n  - { name: laptop',
    /lacks its \[\.$/,
  ],
  [tern, '2.5 mm }', '2.5 mm )', '} belongs here, not ).'],
  [tern, 'size: {', 'size: (', '{ belongs here, not (.'],
  [tern, 'salt water]', 'salt water)', '] belongs here, not ).'],
  [boat, '- id: bimini\n    size', '- id bimini\n    size', 'The colon after id is missing: write id: bimini.'],
  [boat, '- id: coachroof\n    size', '- id = coachroof\n    size', /^The colon after id is missing/],
  [
    boat,
    '- id: coachroof\n    size',
    '- id:coachroof\n    size',
    'A space is missing after the colon: write id: coachroof.',
  ],
  [tern, 'stc: #', 'stc:#', /^A space is missing after the colon: write stc: # 1000/],
  [tern, 'size: {', 'size {', /^The colon after size is missing/],
  [tern, 'size: {', 'size = {', /^The colon after size is missing/],
  [tern, 'size: {', 'size -> {', /^The colon after size is missing/],
  [tern, 'name: Tern', 'name - Tern', 'The colon after name is missing: write name: Tern 110.'],
  [tern, 'maker: Example', 'maker -> Example', /^The colon after maker is missing/],
  [tern, 'exclusions: [', 'exclusions [', /^The colon after exclusions is missing/],
  [boat, '{ name: lights', '{ name lights', 'The colon after name is missing: write name: lights.'],
  [boat, 'surface: bimini }', 'surface bimini }', 'The colon after surface is missing: write surface: bimini.'],
  [tern, 'name: Tern', 'name:\nTern', 'Tern 110 # every demo name is invented belongs to the value of the line above.'],
  [tern, 'size: {', 'size:\n{', /belongs to the value of the line above\.$/],
  [boat, 'format: 1', ' format: 1', /^format is indented by 1 space/],
  [boat, 'battery:\n  battery: ', 'battery:battery: ', 'battery needs a line of its own.'],
  [boat, 'battery:\n', 'battery:,\n', /^The colon after battery is missing/],
  [tern, 'format: 1\nname: ', 'format: 1name: ', 'name needs a line of its own.'],
  [tern, '0/+5 %\n  vmp: ', '0/+5 %vmp: ', 'vmp needs a line of its own.'],
  [tern, '%/°C\nnoct: ', '%/°Cnoct: ', 'noct needs a line of its own.'],
  [tern, 'format: 1\n', 'format:: 1\n', 'Two colons follow format: take one out.'],
  [tern, 'format: 1\n', 'format: "1"\n', 'The format is a number: write 1 without quotes.'],
  [tern, 'bifacial: false', 'bifacial: "false"', /^bifacial is the text "false", in quotes/],
  [boat, '8, 9] }\n  - { name: laptop', '8, 9 }\n  - { name: laptop', /lacks its \]\.$/],
  [tern, '  voc: 22.1 V', '  : voc: 22.1 V', ': in front of voc is not part of the name: take it out.'],
  [tern, '  voc: 22.1 V', '  voc: : 22.1 V', 'Two colons follow voc: take one out.'],
  [tern, 'stc: #', 'stc #', /^The colon after stc is missing/],
  [tern, 'noct: #', '---\nnoct: #', /^--- ends the record here/],
  [tern, 'noct: #', 'no\nct: #', 'A line break splits the name noct: take it out.'],
  [tern, 'weight: 2.2 kg\n', '* weight: 2.2 kg\n', '* in front of weight is not part of the name: take it out.'],
  [tern, 'weight: 2.2 kg\n', '*weight: 2.2 kg\n', /^\* in front of weight is not part of the name/],
  [tern, 'size: {', 'size: "{', /^The quote before .* is not closed on its line: take it out\.$/],
  [tern, '# The exemplary', '```yaml\n# The exemplary', /^The marks of a code block/],
  [
    tern,
    '  imp: 5.92 A\n  voc: 22.1 V\n',
    '  imp: 5.92 A\n  voc: 22.1 V\n  imp: 5.92 A\n  voc: 22.1 V\n',
    /^imp and voc are here for the second time/,
  ],
]

describe('one slip of everyday typing is one finding, its fix brings back what was meant, and the rest is read', () => {
  test.each(slips)('%s: %j as %j', (path, right, typed, says) => {
    const original = asTyped.get(path)!
    expect(original).toContain(right)
    const text = original.replace(right, typed)
    const known = new Set(before.get(path)!.findings.map(({ message }) => message))
    const { findings, values } = check(path, text)
    const [found, ...others] = findings.filter(({ message }) => !known.has(message))
    library.put(path, original)
    expect(others.map(({ message }) => message)).toEqual([])
    expect(found!.severity).toBe('error')
    expect(found!.message).toMatch(says)
    expect(applyEdits(text, found!.corrections[0]!.edits)).toBe(original)
    expect(values).toEqual(expect.arrayContaining(before.get(path)!.values))
  })
})

test('a field that a note speaks of is no field, and no line of a broken rest becomes a value', () => {
  const original = asTyped.get(tern)!
  const noted = original
    .replace(/^weight: .*\n/m, '')
    .replace(/^notes: .*\n(?: .*\n)*/m, 'notes: frame adds weight: 3 kg\n')
  const { findings, values } = check(tern, noted)
  expect(findings.filter(({ severity }) => severity === 'error').map(({ rule }) => rule)).toEqual(['colon-cuts-text'])
  expect(values.some((value) => value.startsWith('/weight '))).toBe(false)
  const cut = check(tern, original.replace('540 mm, thickness: 2.5 mm }', '540 mm }, colour: black, thick: 2.5 mm }'))
  const applied = cut.findings.flatMap(({ corrections }) => corrections.filter(({ certainty }) => certainty === 'same'))
  library.put(tern, original)
  expect(applied).toEqual([])
})

test('a line between the name of a group and its fields is one finding', () => {
  const original = asTyped.get(tern)!
  const swapped = original.replace(/^(surface: .*\n)(stc:.*\n)/m, '$2$1')
  expect(swapped).not.toBe(original)
  const { findings, values } = check(tern, swapped)
  library.put(tern, original)
  expect(findings.filter(({ severity }) => severity === 'error')).toHaveLength(1)
  const others = before.get(tern)!.values.filter((value) => !value.startsWith('/surface '))
  expect(values).toEqual(expect.arrayContaining(others))
})

test.each([
  ['notes: Junction', 'notes: weight:heavy, price:289 USD; Junction'],
  ['maker: Example Panel Works', 'maker: "Example Panel Works weight:2 kg"'],
  ['source: sheets/tern-110.pdf', 'source: see http://page:2'],
  ['name: Tern 110', 'name: Tern 110 voc:22.1'],
])('a name with a colon that is a word is no field: %j as %j', (right, typed) => {
  const original = asTyped.get(tern)!
  const { findings } = check(tern, original.replace(right, typed))
  library.put(tern, original)
  expect(findings.map(({ message }) => message).filter((said) => /own line|of its own/.test(said))).toEqual([])
})

describe('a name that is missing is named', () => {
  const meant = 'A name is missing before the colon, so 22.1 V is not read. Did you mean voc?'
  test.each([
    ['  voc: 22.1 V', '  : 22.1 V', meant],
    ['  voc: 22.1 V', '  "": 22.1 V', meant],
    ['{ length: 1190 mm', '{ : 1190 mm', meant.replace('22.1 V', '1190 mm').replace('voc', 'length')],
    ['weight: 2.2 kg\n', ': 2.2 kg\n', 'A name is missing before the colon, so 2.2 kg is not read.'],
    ['weight: 2.2 kg\n', ': { a: 1 }\n', 'A name is missing before the colon, so what follows it is not read.'],
    ['weight: 2.2 kg\n', ':\n', 'A name is missing here: a field is a name, a colon, a space and a value.'],
    ['weight: 2.2 kg\n', '?\n', 'A name is missing here: a field is a name, a colon, a space and a value.'],
  ])('%j as %j', (right, typed, says) => {
    const original = asTyped.get(tern)!
    const text = original.replace(right, typed)
    const { findings } = check(tern, text)
    library.put(tern, original)
    const [found, ...others] = findings.filter(({ rule }) => rule !== 'weight-missing')
    expect(others.map(({ message }) => message)).toEqual([])
    expect(found!.message).toBe(says)
    for (const { edits } of found!.corrections) expect(applyEdits(text, edits)).toBe(original)
    expect(found!.corrections).toHaveLength(says.includes('Did you mean') ? 1 : 0)
  })
})
