import type { Case } from './hazard-case.ts'

/** What makes a list, a block, a map or another number of what was meant as a value. */
export const ofShape: Readonly<Record<string, readonly Case[]>> = {
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
      says: 'A space is missing after the colon: write voc: 22.1 V.',
      fixed: [['same', 'voc: 22.1 V\nisc: 2 A']],
      spoils: ['/voc'],
      swallows: ['/voc:22.1 V', '/voc'],
    },
    {
      text: 'size:{ length: 1190 mm, width: 540 mm } # c\nb: 1',
      on: 'size:{ length',
      says: 'A space is missing after the colon: write size: { length: 1190 mm, width: 540 mm }.',
      fixed: [['same', 'size: { length: 1190 mm, width: 540 mm } # c\nb: 1']],
      spoils: ['/size', '/size:{ length'],
      swallows: ['/size:{ length', '/size'],
    },
    {
      text: 'stc:\n  voc:22.1 V\nb: 1',
      on: 'voc:22.1 V',
      says: 'A space is missing after the colon: write voc: 22.1 V.',
      fixed: [['same', 'stc:\n  voc: 22.1 V\nb: 1']],
      spoils: ['/stc/voc', '/stc'],
    },
  ],
  'colon-missing': [
    {
      text: 'a: 1\nvoc 22.1 V # c\nb: 2',
      on: 'voc 22.1 V',
      says: 'The colon after voc is missing: write voc: 22.1 V.',
      fixed: [['same', 'a: 1\nvoc: 22.1 V # c\nb: 2']],
      spoils: ['/voc'],
      swallows: ['/voc 22.1 V', '/voc'],
    },
    {
      text: 'stc:\n  voc = 22.1 V # c\n  b: 2',
      on: 'voc = 22.1 V',
      says: 'The colon after voc is missing: write voc: 22.1 V.',
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
      text: 'surfaces:\n  - id: bimini\n    tilt: 0\n    shading: 0\n    id: roof\n    tilt: 5\n',
      on: 'id',
      says: 'id: roof is in a list without the dash that begins an item.',
      fixed: [['guess', 'surfaces:\n  - id: bimini\n    tilt: 0\n    shading: 0\n  - id: roof\n    tilt: 5\n']],
      spoils: ['/surfaces/0/id', '/surfaces/0/tilt'],
    },
    {
      text: 'a: { b: 1, b: 1 }',
      on: 'b',
      says: 'b is here for the second time, with the same value as in line 1. Keep one.',
      fixed: [['same', 'a: { b: 1 }']],
      spoils: [],
    },
    {
      text: 'a: { length: 1190 mm, width: 540 mm, thickness: 2.5 mm }\na: { length: 1190 mm, width: 540 mm, thickness: 2.6 mm }\n',
      on: 'a',
      says: 'a is here twice, in line 1 with other values. Keep the one that the sheet says.',
      fixed: [
        ['guess', 'a: { length: 1190 mm, width: 540 mm, thickness: 2.5 mm }\n'],
        ['guess', 'a: { length: 1190 mm, width: 540 mm, thickness: 2.6 mm }\n'],
      ],
      spoils: ['/a'],
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
