import type { Case } from './hazard-case.ts'

/** Encodings, commas, comments, signs before a value, and tabs. */
export const ofSigns: Readonly<Record<string, readonly Case[]>> = {
  'not-utf-8': [
    {
      text: 'limits: { bend: 30\ufffd }',
      on: '\ufffd',
      says: 'A character here is not UTF-8, perhaps Windows-1252 or Latin-1: save the file as UTF-8, and type it again.',
      spoils: ['/limits/bend'],
    },
  ],
  'pasted-characters': [
    {
      text: 'vmp:\u00A018.6 V\nb: 2',
      on: '\u00A0',
      says: 'There is a no-break space after vmp:, as PDFs have it; YAML needs a plain one.',
      fixed: [['same', 'vmp: 18.6 V\nb: 2']],
      spoils: [],
    },
    {
      text: 'a:\n\u00A0 b: 1\u202FV # c\u00A0d\n  ef\u00ADg: 2',
      on: '\u00A0',
      says: 'There is a no-break space at the start of a line, as PDFs have it; YAML needs a plain one. 2 more in this file.',
      fixed: [['same', 'a:\n  b: 1 V # c\u00A0d\n  efg: 2']],
      spoils: [],
    },
    {
      text: 'a: 110\u00A0W\nb: 2',
      on: '\u00A0',
      says: 'There is a no-break space after 110, as PDFs have it; other tools stop at it.',
      fixed: [['same', 'a: 110 W\nb: 2']],
      spoils: [],
    },
  ],
  'decimal-comma-splits': [
    {
      text: 'stc: { imp: 5,92 A, voc: 22.1 V }',
      on: '5,92 A',
      says: '5,92 A should be 5.92 A: the comma splits the entry inside { }, and YAML reads imp: 5 and a stray 92 A.',
      fixed: [['same', 'stc: { imp: 5.92 A, voc: 22.1 V }']],
      spoils: ['/stc/imp'],
      swallows: ['/stc/92 A'],
    },
    {
      text: 'size: { length: 1,190 mm }',
      on: '1,190 mm',
      says: '1,190 mm should be 1190 mm: the comma splits the entry inside { }, and YAML reads length: 1 and a stray 190 mm.',
      fixed: [['same', 'size: { length: 1190 mm }']],
      spoils: ['/size/length'],
      swallows: ['/size/190 mm'],
    },
    {
      text: 'price: { amount: USD 1,520.00, from: a }',
      on: 'USD 1,520.00',
      says: 'USD 1,520.00 should be USD 1520.00: the comma splits the entry inside { }, and YAML reads amount: USD 1 and a stray 520.00.',
      fixed: [['same', 'price: { amount: USD 1520.00, from: a }']],
      swallows: ['/price/520.00'],
    },
    {
      text: 'weight: { a: 1,250 kg }',
      on: '1,250 kg',
      says: '1,250 kg should be 1250 kg or 1.250 kg: the comma splits the entry inside { }, and YAML reads a: 1 and a stray 250 kg.',
      fixed: [
        ['guess', 'weight: { a: 1250 kg }'],
        ['guess', 'weight: { a: 1.250 kg }'],
      ],
      swallows: ['/weight/250 kg'],
    },
    {
      text: 'size: { length: 1.190,5 mm, width: 1 m }',
      on: '1.190,5 mm',
      says: '1.190,5 mm should be 1190.5 mm: the comma splits the entry inside { }, and YAML reads length: 1.190 and a stray 5 mm.',
      fixed: [['same', 'size: { length: 1190.5 mm, width: 1 m }']],
      swallows: ['/size/5 mm'],
    },
    {
      text: 'a: [5,92, 6,31]',
      on: '5,92, 6,31',
      says: '5,92, 6,31 should be 5.92, 6.31: the comma splits the item inside [ ], and YAML reads 5 and 92 and 6 and 31.',
      fixed: [['guess', 'a: [5.92, 6.31]']],
      spoils: ['/a', '/a/0', '/a/1', '/a/2', '/a/3'],
    },
    {
      text: 'a: [5,92 A]',
      on: '5,92 A',
      says: '5,92 A should be 5.92 A: the comma splits the item inside [ ], and YAML reads 5 and 92 A.',
      fixed: [['guess', 'a: [5.92 A]']],
      spoils: ['/a', '/a/0', '/a/1'],
    },
  ],
  'comma-cuts-text': [
    {
      text: 'a: { imp: 5.92 A, typ }',
      on: 'typ',
      says: 'The comma before typ ends the entry inside { }: quote the whole text, or give typ a colon and a value.',
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
      says: 'The # begins a comment, so YAML loses the rest of the line: #typ, voc: 22.1 V }. Take it out, or put the text in quotes.',
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
}
