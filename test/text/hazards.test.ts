import { describe, expect, test } from 'vitest'
import { toldInWords } from '../../server/src/wording/told.ts'
import { explains, hazards } from '../../server/src/text/hazards/index.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { record } from './samples.ts'

/** All hazards of a text as `id words: message`, and the complaints that none of them explains. */
function found(text: string) {
  const tree = readTree(text)
  const all = hazards.flatMap((rule) => rule.find(tree).map((hazard) => ({ id: rule.id, hazard })))
  const rest = tree.problems.filter((problem) => !all.some(({ hazard }) => explains(hazard, problem)))
  return { all, rest }
}

interface Case {
  readonly text: string
  /** The characters that the finding stands on. */
  readonly on: string
  readonly says: string
  /** The whole text after each fix; `same` first where a fix keeps what was meant. */
  readonly fixed?: readonly (readonly ['same' | 'guess', string])[]
  readonly spoils?: readonly string[]
  readonly swallows?: readonly string[]
}

const cases: Readonly<Record<string, readonly Case[]>> = {
  'not-utf-8': [
    {
      text: 'limits: { bend: 30\ufffd }',
      on: '\ufffd',
      says: 'A character here is not UTF-8, perhaps Windows-1252 or Latin-1: save the file as UTF-8, and type it again.',
      spoils: [],
    },
  ],
  'decimal-comma-splits': [
    {
      text: 'stc: { imp: 5,92 A, voc: 22.1 V }',
      on: '5,92 A',
      says: 'The decimal comma in 5,92 A splits the entry inside { }: YAML reads imp: 5 and a stray 92 A. Write 5.92 A.',
      fixed: [['same', 'stc: { imp: 5.92 A, voc: 22.1 V }']],
      spoils: ['/stc/imp'],
      swallows: ['/stc/92 A'],
    },
    {
      text: 'size: { length: 1,190 mm }',
      on: '1,190 mm',
      says: 'The decimal comma in 1,190 mm splits the entry inside { }: YAML reads length: 1 and a stray 190 mm. Write 1190 mm or 1.190 mm.',
      fixed: [
        ['guess', 'size: { length: 1190 mm }'],
        ['guess', 'size: { length: 1.190 mm }'],
      ],
      spoils: ['/size/length'],
      swallows: ['/size/190 mm'],
    },
    {
      text: 'size: { length: 1.190,5 mm, width: 1 m }',
      on: '1.190,5 mm',
      says: 'The decimal comma in 1.190,5 mm splits the entry inside { }: YAML reads length: 1.190 and a stray 5 mm. Write 1190.5 mm.',
      fixed: [['same', 'size: { length: 1190.5 mm, width: 1 m }']],
      swallows: ['/size/5 mm'],
    },
    {
      text: 'a: [5,92, 6,31]',
      on: '5,92, 6,31',
      says: 'A decimal comma in 5,92, 6,31 splits the item inside [ ]: YAML reads 5 and 92 and 6 and 31. Write 5.92, 6.31.',
      fixed: [['guess', 'a: [5.92, 6.31]']],
      spoils: ['/a', '/a/0', '/a/1', '/a/2', '/a/3'],
    },
    {
      text: 'a: [5,92 A]',
      on: '5,92 A',
      says: 'A decimal comma in 5,92 A splits the item inside [ ]: YAML reads 5 and 92 A. Write 5.92 A.',
      fixed: [['guess', 'a: [5.92 A]']],
      spoils: ['/a', '/a/0', '/a/1'],
    },
  ],
  'comma-cuts-text': [
    {
      text: 'a: { imp: 5.92 A, typ }',
      on: 'typ',
      says: 'The comma before typ ends the entry inside { }: YAML reads imp: 5.92 A and a stray typ. Put the text in quotes, or give typ a colon and a value.',
      fixed: [['guess', 'a: { imp: "5.92 A, typ" }']],
      spoils: [],
      swallows: ['/a/typ'],
    },
  ],
  'hash-cuts-text': [
    {
      text: 'name: Panel #4',
      on: '#4',
      says: 'YAML takes #4 for a comment, so the text is Panel alone. Put quotes around Panel #4, or a space after the #.',
      fixed: [
        ['same', 'name: Panel # 4'],
        ['guess', 'name: "Panel #4"'],
      ],
      spoils: [],
    },
  ],
  'hash-cuts-braces': [
    {
      text: 'stc: { imp: 5.92 A #typ, voc: 22.1 V }\nb: 1',
      on: '#typ, voc: 22.1 V }',
      says: 'The # begins a comment, so YAML loses the rest of the line: #typ, voc: 22.1 V }. Put quotes around the text with the #, or take it out.',
      fixed: [
        ['guess', 'stc: { imp: 5.92 A, voc: 22.1 V }\nb: 1'],
        ['guess', 'stc: { imp: "5.92 A #typ", voc: 22.1 V }\nb: 1'],
      ],
      spoils: ['/stc'],
    },
  ],
  'sign-eats-number': [
    {
      text: 'pmax: &110 W',
      on: '&110 W',
      says: 'YAML takes &110 for an anchor and reads W alone. Write 110 W.',
      fixed: [
        ['guess', 'pmax: 110 W'],
        ['guess', 'pmax: "&110 W"'],
      ],
    },
    {
      text: 'stc: { pmax: !110 W, voc: 1 V }',
      on: '!110 W',
      says: 'YAML takes !110 for a type and reads W alone. Write 110 W.',
      fixed: [
        ['guess', 'stc: { pmax: 110 W, voc: 1 V }'],
        ['guess', 'stc: { pmax: "!110 W", voc: 1 V }'],
      ],
    },
    {
      text: 'pmax: *110 W # c',
      on: '*110 W',
      says: 'YAML takes *110 for an alias and looks for a value of that name. Write 110 W.',
      fixed: [
        ['guess', 'pmax: 110 W # c'],
        ['guess', 'pmax: "*110 W" # c'],
      ],
    },
    {
      text: 'name: *tern',
      on: '*tern',
      says: 'YAML takes *tern for an alias and looks for a value of that name. Write the text in quotes.',
      fixed: [['same', 'name: "*tern"']],
    },
  ],
  'tab-indents': [
    {
      text: 'stc:\n\tvoc: 1 V\n\tisc: 2 A\nb: 3',
      on: '\t',
      says: 'A tab indents voc and 1 more line: YAML counts spaces only. Write spaces instead.',
      fixed: [['same', 'stc:\n  voc: 1 V\n  isc: 2 A\nb: 3']],
      spoils: [],
    },
    {
      text: 'stc:\n  voc: 1 V\n\tisc: 2 A\nb: 3',
      on: '\t',
      says: 'A tab indents isc: YAML counts spaces only. Write spaces instead.',
      fixed: [['guess', 'stc:\n  voc: 1 V\n  isc: 2 A\nb: 3']],
      spoils: ['/isc', '/stc/isc'],
      swallows: ['/isc', '/stc/isc'],
    },
    {
      text: 'size: { width: 1 m }\n\tweight: 2 kg\nb: 3',
      on: '\t',
      says: 'A tab indents weight: YAML counts spaces only. Write spaces instead.',
      fixed: [['same', 'size: { width: 1 m }\nweight: 2 kg\nb: 3']],
      spoils: [],
    },
  ],
  'minus-apart': [
    {
      text: 'voc: - 0.38 %/K\nb: 2',
      on: '- 0.38 %/K',
      says: 'The minus and the number must touch: YAML reads - 0.38 %/K as a list. Write -0.38 %/K.',
      fixed: [['same', 'voc: -0.38 %/K\nb: 2']],
    },
    {
      text: 'a: { voc: - 0.38 %/K, b: 2 }',
      on: '- 0.38 %/K',
      says: 'The minus and the number must touch: YAML reads - 0.38 %/K as a list. Write -0.38 %/K.',
      fixed: [['same', 'a: { voc: -0.38 %/K, b: 2 }']],
    },
    {
      text: 'voc: -\nb: 2',
      on: '-',
      says: 'YAML reads - as a list item. Leave the field out if the sheet gives no value, or put the text in quotes.',
      fixed: [['same', 'voc: "-"\nb: 2']],
    },
  ],
  'sign-begins-block': [
    {
      text: 'efficiency: > 20 %\nb: 2',
      on: '> 20 %',
      says: 'YAML takes the > in > 20 % for the beginning of a text of several lines. Write 20 %, or put it in quotes.',
      fixed: [
        ['guess', 'efficiency: 20 %\nb: 2'],
        ['guess', 'efficiency: "> 20 %"\nb: 2'],
      ],
    },
    {
      text: 'a: { b: | 5, c: 1 }',
      on: '| 5',
      says: 'YAML takes the | in | 5 for the beginning of a text of several lines. Write 5, or put it in quotes.',
      fixed: [
        ['guess', 'a: { b: 5, c: 1 }'],
        ['guess', 'a: { b: "| 5", c: 1 }'],
      ],
    },
  ],
  'colon-cuts-text': [
    {
      text: 'a: 80 % after 5 years: see sheet\nb: 1',
      on: '80 % after 5 years: see sheet',
      says: 'The colon in 80 % after 5 years: see sheet makes a second field on the same line. Put the text in quotes.',
      fixed: [['same', 'a: "80 % after 5 years: see sheet"\nb: 1']],
    },
  ],
  'text-behind-quote': [
    {
      text: 'a: { pmax: "110" W, c: 2 }',
      on: '"110" W',
      says: 'YAML reads "110" and cannot read what follows the closing quote. Write 110 W.',
      fixed: [['same', 'a: { pmax: 110 W, c: 2 }']],
      spoils: ['/a/pmax'],
    },
    {
      text: 'name: "Tern" 110: flexible',
      on: '"Tern" 110: flexible',
      says: 'YAML reads "Tern" and cannot read what follows the closing quote. Write all of it in quotes.',
      fixed: [['same', 'name: \'"Tern" 110: flexible\'']],
    },
  ],
  'braces-around-number': [
    {
      text: 'imp: {5.92 A}',
      on: '{5.92 A}',
      says: 'The braces around 5.92 A make a map of it. Write 5.92 A without them.',
      fixed: [['same', 'imp: 5.92 A']],
      swallows: ['/imp/5.92 A'],
    },
    {
      text: 'imp: {5,92 A}',
      on: '{5,92 A}',
      says: 'The braces around 5,92 A make a map of it. Write 5.92 A without them.',
      fixed: [['same', 'imp: 5.92 A']],
      swallows: ['/imp/5', '/imp/92 A'],
    },
  ],
  'colon-without-space': [
    {
      text: 'voc:22.1 V\nisc: 2 A',
      on: 'voc:22.1 V',
      says: 'A space is missing after voc: YAML reads voc:22.1 V as one word. Write voc: 22.1 V.',
      fixed: [['same', 'voc: 22.1 V\nisc: 2 A']],
      spoils: ['/voc'],
      swallows: ['/voc:22.1 V'],
    },
    {
      text: 'stc:\n  voc:22.1 V\nb: 1',
      on: 'voc:22.1 V',
      says: 'A space is missing after voc: YAML reads voc:22.1 V as one word. Write voc: 22.1 V.',
      fixed: [['same', 'stc:\n  voc: 22.1 V\nb: 1']],
      spoils: ['/stc/voc', '/stc'],
    },
  ],
  'colon-missing': [
    {
      text: 'a: 1\nvoc 22.1 V # c\nb: 2',
      on: 'voc 22.1 V',
      says: 'The colon after voc is missing: YAML reads voc 22.1 V as a name without a value. Write voc: 22.1 V.',
      fixed: [['same', 'a: 1\nvoc: 22.1 V # c\nb: 2']],
      spoils: ['/voc'],
      swallows: ['/voc 22.1 V', '/voc'],
    },
    {
      text: 'stc:\n  voc = 22.1 V # c\n  b: 2',
      on: 'voc = 22.1 V',
      says: 'The colon after voc is missing: YAML reads voc = 22.1 V as a name without a value. Write voc: 22.1 V.',
      fixed: [['same', 'stc:\n  voc: 22.1 V # c\n  b: 2']],
      spoils: ['/stc/voc'],
      swallows: ['/stc/voc = 22.1 V', '/stc/voc'],
    },
    {
      text: 'a: 1\nvo',
      on: 'vo',
      says: 'vo has no colon and no value: write vo: and what the sheet says.',
      swallows: ['/vo'],
    },
  ],
  'field-twice': [
    {
      text: 'voc: 22.1 V\nisc: 1 A\nvoc: 21.2 V\n',
      on: 'voc',
      says: 'voc is here twice: 22.1 V in line 1, and 21.2 V here. Keep the one that the sheet says.',
      fixed: [
        ['guess', 'voc: 22.1 V\nisc: 1 A\n'],
        ['guess', 'isc: 1 A\nvoc: 21.2 V\n'],
      ],
      spoils: ['/voc'],
    },
    {
      text: 'a: { b: 1, b: 1 }',
      on: 'b',
      says: 'b is here for the second time, with the same value as in line 1. Keep one.',
      fixed: [['same', 'a: { b: 1 }']],
    },
  ],
  'merge-key': [
    {
      text: '<<: *base\na: 1',
      on: '<<: *base',
      says: '<< copies fields from another place, which records do not do. Write the fields out here.',
      swallows: ['/<<'],
    },
  ],
  'number-two-readings': [
    {
      text: 'a: 012',
      on: '012',
      says: '012 is 12 in YAML 1.2 and 10 in YAML 1.1. Write 12.',
      fixed: [
        ['guess', 'a: 12'],
        ['guess', 'a: "012"'],
      ],
    },
    {
      text: 'a: 0x1F',
      on: '0x1F',
      says: '0x1F is 31 to YAML, counted by sixteens, and a text to a person. Write a plain number, or put the text in quotes.',
      fixed: [['guess', 'a: "0x1F"']],
    },
    {
      text: 'a: 1_000',
      on: '1_000',
      says: '1_000 is a text in YAML 1.2 and 1000 in YAML 1.1. Write 1000.',
      fixed: [
        ['same', 'a: 1000'],
        ['guess', 'a: "1_000"'],
      ],
      spoils: [],
    },
    {
      text: 'a: 12:30',
      on: '12:30',
      says: '12:30 is a text in YAML 1.2 and 750, counted by sixties, in YAML 1.1. Write a plain number, or put the text in quotes.',
      fixed: [['guess', 'a: "12:30"']],
    },
    {
      text: 'a: 1e3',
      on: '1e3',
      says: '1e3 is 1000 in YAML 1.2 and a text in YAML 1.1. Write 1000.',
      fixed: [
        ['same', 'a: 1000'],
        ['guess', 'a: "1e3"'],
      ],
      spoils: [],
    },
  ],
}

test('every hazard has a case', () => expect(Object.keys(cases).sort()).toEqual(hazards.map(({ id }) => id).sort()))

describe.each(Object.entries(cases))('%s', (id, rows) => {
  test.each(rows)('$text', ({ text, on, says, fixed = [], spoils, swallows = [] }) => {
    const { all, rest } = found(text)
    expect(all.map((each) => [each.id, toldInWords(each.hazard.message)])).toEqual([[id, says]])
    expect(rest).toEqual([])
    const { hazard } = all[0]!
    expect(text.slice(hazard.span.start, hazard.span.end)).toBe(on)
    expect(hazard.fixes.map(({ certainty, edits }) => [certainty, applyEdits(text, edits)])).toEqual(fixed)
    expect(hazard.spoils).toEqual(spoils ?? [hazard.pointer])
    expect(hazard.swallows).toEqual(swallows)
    for (const [, after] of fixed) {
      const again = found(after)
      expect([...again.all.map((each) => each.id), ...again.rest]).toEqual([])
    }
  })
})

test.each([
  ['a sound record', record],
  ['numbers in a list', 'months: [5, 6,7,8, 9]\nmore: [1,2,3]'],
  ['a comment behind a map', 'a: { b: 1 } #c\n# d }\n#e\nf: [1, #g\n  2]'],
  [
    'words with signs inside',
    'a: http://x.y/#z\nb: x-y *z & !w\nc: 12 V\nd: 2026-10-04\ne: 0.5\nf: -1\ng: 0\nh: ~110 W\ni: 012 V',
  ],
  ['quoted', 'a: "&110 W"\nb: \'- 1 V\'\nc: "> 5: #x"'],
  ['JSON', '{\n  "a": { "b": [1,2,3], "c": "x: y" }\n}\n'],
])('%s is no hazard', (_, text) => expect(found(text)).toEqual({ all: [], rest: [] }))
