import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { FieldInfo, RecordKind } from '../../server/src/records/field-info.ts'
import { recordOfPath } from '../../server/src/records/kinds.ts'
import { readFile } from '../../server/src/records/read.ts'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { cellsOf, dotted, pointerOf } from '../../server/src/rows/cells.ts'
import { columnsOf } from '../../server/src/rows/columns.ts'
import { readRows } from '../../server/src/rows/read-rows.ts'
import { recordText } from '../../server/src/rows/record-text.ts'
import { toCsv } from '../../server/src/terminal/tables/formats.ts'
import { phraseInWords } from '../../server/src/wording/phrase.ts'

type Cells = ReadonlyMap<string, string>

const cellsIn = (kind: RecordKind, text: string): Cells => cellsOf(readFile(`a.${kind}.yaml`, text)!.tree)

/** The cells as a spreadsheet file, read back into the text of a record. */
function throughTable(kind: RecordKind, cells: Cells): string {
  const columns = [...cells.keys()].map((pointer) => ({
    key: dotted(pointer),
    label: '',
    cell: (row: Cells) => ({ value: row.get(pointer) ?? null, text: '' }),
  }))
  const table = readRows(toCsv([cells], columns, ''))
  if ('problem' in table) throw new Error(phraseInWords(table.problem))
  const { headings, rows, hasDecimalCommas } = table
  const read = columnsOf(headings, schemas[kind]!, {})
  const filled = read.flatMap((column, i) =>
    column.is === 'field' ? [{ named: column.named, text: rows[0]!.cells[i]! }] : [],
  )
  return recordText(schemas[kind]!, filled, hasDecimalCommas)
}

describe('what a record types is the same after a table', () => {
  const records = ['samples', 'test'].flatMap((folder) =>
    readdirSync(folder, { recursive: true })
      .map((name) => `${folder}/${name as string}`)
      .filter((path) => /^samples\/(?!mistakes)/.test(path) && recordOfPath(path) && !/wattproof/.test(path)),
  )
  test.each(records)('%s', (path) => {
    const { kind, tree } = readFile(path, readFileSync(path, 'utf8'))!
    const cells = cellsOf(tree)
    expect(cells.size).toBeGreaterThan(3)
    expect(Object.fromEntries(cellsIn(kind, throughTable(kind, cells)))).toEqual(Object.fromEntries(cells))
  })
})

test('any text in any field', () => {
  const texts = leavesOf(schemas.panel!, '').filter(([, { type }]) => type !== 'list' && type !== 'map')
  const odd = fc.constantFrom(
    '=1+1',
    "'-2",
    '-0.38 %/°C',
    '+5/-0 W',
    '@x',
    '# no',
    'a: b',
    '- a',
    '[a]',
    '{',
    'true',
    '1.0',
    '"',
    "it's",
    'a,b;c',
    'two\nlines',
    'ü €',
  )
  const text = fc.oneof(odd, fc.string({ minLength: 1 })).filter((one) => one.trim() === one && one !== '')
  const record = fc.uniqueArray(fc.tuple(fc.constantFrom(...texts.map(([pointer]) => pointer)), text), {
    selector: ([pointer]) => pointer,
    minLength: 1,
  })
  fc.assert(
    fc.property(record, (cells) => {
      const typed = new Map(cells)
      const read = cellsIn('panel', throughTable('panel', typed))
      for (const [pointer, one] of typed) expect(read.get(pointer), pointer).toBe(one)
    }),
    { seed: 1, numRuns: 500 },
  )
})

function leavesOf({ fields = [] }: FieldInfo, parent: string): readonly (readonly [string, FieldInfo])[] {
  return fields.flatMap((field) => {
    const pointer = pointerOf(dotted(`${parent}/${field.key}`))
    return field.type === 'group' ? leavesOf(field, pointer) : [[pointer, field] as const]
  })
}
