import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import { schemas } from '../records/schemas.generated.ts'
import { stemOf } from '../records/stem.ts'
import { visible } from '../text/visible.ts'
import { columnsOf, type Column, type Meanings } from './columns.ts'
import { readRows, type Row, type Rows } from './read-rows.ts'
import { recordText } from './record-text.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phrase, sayIn, type Phrase } from '../wording/phrase.ts'

/** A record that one row of a table makes. */
export interface RowDraft {
  readonly row: Row
  /** Of its file. */
  readonly name: string
  readonly text: string
}

export interface RowDrafts {
  readonly drafts: readonly RowDraft[]
  readonly columns: readonly Column[]
  /** Columns that no field takes, a line each. */
  readonly notes: readonly Phrase[]
}

/**
 * Makes the text of a record of each row of a table. What no field takes stays in a comment of the record, so that nothing is lost.
 *
 * @param from   the name of the table, for comments and messages
 * @param saved  headings that a library explains
 * @param bundle for comments
 * @returns      the records; or what is wrong with a table that cannot be read, has no column that is a field, or two rows of one name
 */
export function draftsFromRows(
  kind: RecordKind,
  text: string,
  from: string,
  saved: Meanings,
  bundle?: Bundle,
): RowDrafts | { readonly problem: Phrase } {
  const table = readRows(text)
  if ('problem' in table) return { problem: phrase`${from}:${table.line}: ${table.problem}` }
  const columns = columnsOf(table.headings, schemas[kind]!, saved)
  if (!columns.some(({ is }) => is === 'field'))
    return { problem: phrase`${from} has no column that is a field of a ${kind} record: ${table.headings.join(', ')}` }
  const drafts = table.rows.map((row) => ({
    row,
    name: `${idOf(row, columns, kind)}.${kind}.yaml`,
    text: textOf(kind, row, columns, table, from, bundle),
  }))
  const problem = sameName(drafts, from)
  return problem === null ? { drafts, columns, notes: columns.flatMap(noteOf) } : { problem }
}

const noteOf = (column: Column) =>
  column.is === 'unknown'
    ? [
        phrase`column \`${visible(column.heading)}\` is not read: ${column.because}; wattproof.yaml can say what it holds, under columns`,
      ]
    : []

const cellOf = ({ cells }: Row, columns: readonly Column[], wanted: (column: Column) => boolean) =>
  cells.find((cell, i) => cell !== '' && wanted(columns[i]!))

/** The file name that the row gives, or one made of the name of the record. */
function idOf(row: Row, columns: readonly Column[], kind: RecordKind): string {
  const file = cellOf(row, columns, ({ is }) => is === 'file')
  if (file !== undefined) {
    const record = recordOfPath(file)
    return record?.kind === kind
      ? record.id
      : stemOf(file.slice(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1))
  }
  const name = cellOf(row, columns, (column) => column.is === 'field' && column.named.pointer === '/name')
  return name === undefined ? `row-${row.line}` : stemOf(name)
}

function textOf(
  kind: RecordKind,
  { cells, line }: Row,
  columns: readonly Column[],
  { hasDecimalCommas }: Rows,
  from: string,
  bundle: Bundle | undefined,
): string {
  const filled = columns.flatMap((column, i) =>
    column.is === 'field' && cells[i] !== '' ? [{ named: column.named, text: cells[i]! }] : [],
  )
  const others = columns.flatMap(({ heading, is }, i) =>
    is === 'unknown' && cells[i] !== ''
      ? [`# ${sayIn(bundle)`not in a field, ${from}:${line}: ${visible(`${heading}: ${cells[i]}`)}`}\n`]
      : [],
  )
  return recordText(schemas[kind]!, filled, hasDecimalCommas) + others.join('')
}

function sameName(drafts: readonly RowDraft[], from: string): Phrase | null {
  const lines = new Map<string, number>()
  for (const { name, row } of drafts) {
    // for many disks a capital is a small letter
    const before = lines.get(name.toLowerCase())
    if (before !== undefined) return phrase`rows ${before} and ${row.line} of ${from} would both be \`${name}\``
    lines.set(name.toLowerCase(), row.line)
  }
  return null
}
