import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

const rows = `\ufeffModell;Nennleistung (W);Umpp (V);Impp (A);Leerlaufspannung [V];Isc A;Länge mm;Breite mm;Preis (EUR);Regal
Tern 110;110;18,6;5,92;22,1;6,31;1190;540;289,00;3

Tern 55;55;18,6;2,96;22,1;3,16;1.190,5;270;;
`
const text = (cwd: string, name: string) => readFileSync(join(cwd, name), 'utf8')

test('a spreadsheet with semicolons, decimal commas and units in the heading makes a file a row', () => {
  const cwd = scratch({ 'panels.csv': rows })
  const { code, err } = wattproof(['new', 'panel', '--from', 'panels.csv', '-o', 'lib/panels'], { cwd })
  expect(text(cwd, 'lib/panels/tern-110.panel.yaml')).toBe(`format: 1
name: Tern 110
stc:
  pmax: 110 W
  vmp: 18.6 V
  imp: 5.92 A
  voc: 22.1 V
  isc: 6.31 A
size:
  length: 1190 mm
  width: 540 mm
price:
  amount: 289.00 EUR
# not in a field, panels.csv:2: Regal: 3
`)
  expect(text(cwd, 'lib/panels/tern-55.panel.yaml')).toContain('length: 1190.5 mm')
  expect(err).toContain('panels.csv: column `Regal` is not read: no field of a panel record has that name')
  expect(err).toContain('wrote 2 panel records to lib/panels')
  expect(code).toBe(0)
})

test('every cell gets the findings of typed text, by its row and its heading', () => {
  const cwd = scratch({
    'p.csv':
      'Name,Voc (V),Vmp (V),Imp (A),Isc (A),Pmax (W),Length (mm),Width (mm)\nA,2.21,18.6,5.92,6.31,110,1190,540\nB,22.1,18.6,5.92,6.31,110,1190,540 kg\n',
  })
  const { code, out } = wattproof(['new', 'panel', '--from', 'p.csv'], { cwd })
  expect(code).toBe(1)
  expect(out).toMatch(/^p\.csv:2: Voc \(V\): error voc-below-vmp: Voc 2\.21 V is probably 22\.1 V/m)
  expect(out).toMatch(/^p\.csv:3: Width \(mm\): error \S+: .*kg/m)
  expect(readdirSync(cwd).sort()).toEqual(['a.panel.yaml', 'b.panel.yaml', 'p.csv'])
})

test('a library explains its own headings', () => {
  const cwd = scratch({
    'wattproof.yaml': 'format: 1\ncolumns: { U0: stc.voc V, Shelf: "-" }\n',
    'p.csv': 'name,U0,Shelf\nA,22.1,7\n',
  })
  const { err } = wattproof(['new', 'panel', '--from', 'p.csv'], { cwd })
  expect(text(cwd, 'a.panel.yaml')).toBe('format: 1\nname: A\nstc:\n  voc: 22.1 V\n')
  expect(err).not.toContain('Shelf')
})

test.each([
  [
    'a file that is there',
    { 'p.csv': 'name,Voc\nA,22 V\nB,22 V\n', 'b.panel.yaml': 'mine' },
    /`b\.panel\.yaml` is there already/,
  ],
  [
    'two rows of one name',
    { 'p.csv': 'name,Voc\nA b,22 V\na-B,22 V\n' },
    /rows 2 and 3 of p\.csv would both be `a-b\.panel\.yaml`/,
  ],
  [
    'file names that differ in capitals alone',
    { 'p.csv': 'file,Voc\nA.panel.yaml,22 V\na.panel.yaml,22 V\n' },
    /rows 2 and 3 of p\.csv would both be/,
  ],
  ['no column that is a field', { 'p.csv': 'x,y\n1,2\n' }, /no column that is a field of a panel record: x, y/],
  [
    'an open quote',
    { 'p.csv': 'name,Voc\n"A,22 V\n' },
    /p\.csv:2: a quotation mark opens a cell here, and none closes it/,
  ],
  ['text after a quote', { 'p.csv': 'name,Voc\n"A"b,22 V\n' }, /p\.csv:2: text follows the quotation mark that closes/],
  [
    'inches in a cell',
    { 'p.csv': 'name,Voc\nA 12",22 V\n' },
    /p\.csv:2: a quotation mark inside a cell: put the cell in/,
  ],
  ['more cells than headings', { 'p.csv': 'name,Voc\nA,22 V,5\n' }, /p\.csv:2: this row has 3 cells and the heading 2/],
  ['nothing', { 'p.csv': '' }, /p\.csv:1: it is empty/],
])('%s: nothing is written', (_, files: Record<string, string>, message) => {
  const cwd = scratch(files)
  const { code, err } = wattproof(['new', 'panel', '--from', 'p.csv'], { cwd })
  expect(code).toBe(2)
  expect(err).toMatch(message)
  expect(readdirSync(cwd).sort()).toEqual(Object.keys(files).sort())
})

test('another encoding is named', () => {
  const cwd = scratch()
  writeFileSync(join(cwd, 'p.csv'), Buffer.from('name,Voc\nZ\xe4hler,22 V\n', 'latin1'))
  const { code, err } = wattproof(['new', 'panel', '--from', 'p.csv'], { cwd })
  expect([code, err]).toEqual([2, expect.stringContaining('p.csv:2: it is not UTF-8')])
})

test('a batch of records goes out as a table and comes back', () => {
  const cwd = scratch()
  const { out } = wattproof(['table', 'samples/systems/batteries', '--format', 'csv'])
  const table = join(cwd, 'batteries.csv')
  writeFileSync(table, out)
  expect(wattproof(['new', 'battery', '--from', table, '-o', 'back'], { cwd }).code).toBe(0)
  const back = wattproof(['table', 'back', '--format', 'csv'], { cwd }).out
  expect(back.replaceAll('back/', '')).toBe(out.replaceAll('samples/systems/batteries/', ''))
})
