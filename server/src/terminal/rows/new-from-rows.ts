import { checkFile } from '../../check/check.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Library } from '../../library/library.ts'
import type { RecordKind } from '../../records/field-info.ts'
import { recordOfPath } from '../../records/kinds.ts'
import { schemas } from '../../records/schemas.generated.ts'
import { columnsOf, type Column } from '../../rows/columns.ts'
import { readRows, type Row, type Rows } from '../../rows/read-rows.ts'
import { recordText } from '../../rows/record-text.ts'
import { stemOf } from '../../sheets/draft.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { contextsOf, libraryOf, load } from '../load.ts'
import { absolute, folderOf } from '../paths.ts'
import { visible } from '../visible.ts'
import type { World } from '../world.ts'

/** A record that one row of a table makes, with what is found in it. */
interface Made {
  readonly path: string
  readonly row: Row
  readonly text: string
  readonly findings: readonly Finding[]
}

/** The records that the rows of a table make, and what to say about them. */
interface FromRows {
  readonly records: readonly Made[]
  /** Columns that no field takes, a line each. */
  readonly notes: readonly string[]
  /** What is found in the records, by the row and the heading of its cell, a line each. */
  readonly report: readonly string[]
}

/**
 * Makes a record of each row of a table, in a folder. What no field takes stays in a comment of the record, so that nothing is lost.
 *
 * @throws CouldNotRun  for a table that cannot be read, for two rows of one name, and where no column is a field
 */
export async function recordsFromRows(
  world: World,
  kind: RecordKind,
  from: string,
  output: string | undefined,
): Promise<FromRows> {
  const text = await world.read(absolute(world.cwd, from)).catch((error: NodeJS.ErrnoException) => {
    throw new CouldNotRun(`${from} cannot be read (${error.code})`)
  })
  const table = readRows(text)
  if ('problem' in table) throw new CouldNotRun(`${from}:${table.line}: ${table.problem}`)
  const folder = absolute(world.cwd, output ?? '.')
  const library = await libraryAround(world, folder)
  const saved = library.settings(`${folder}/new.${kind}.yaml`)?.record.columns ?? {}
  const columns = columnsOf(table.headings, schemas[kind]!, saved)
  if (!columns.some(({ is }) => is === 'field'))
    throw new CouldNotRun(`${from} has no column that is a field of a ${kind} record: ${table.headings.join(', ')}`)
  const drafts = table.rows.map((row) => ({
    row,
    path: `${folder}/${nameOf(row, columns, kind)}.${kind}.yaml`,
    text: textOf(kind, row, columns, table, from),
  }))
  mustDiffer(drafts, from)
  for (const { path, text } of drafts) library.put(path, text)
  const records = drafts.map((draft) => ({ ...draft, findings: found(library, draft.path, world.today) }))
  return {
    records,
    notes: columns.flatMap(({ heading, ...column }) =>
      column.is === 'unknown'
        ? [
            `column \`${visible(heading)}\` is not read: ${column.because}; wattproof.yaml can say what it holds, under columns`,
          ]
        : [],
    ),
    report: records.flatMap(({ row, findings }) => findings.map((one) => reported(one, from, row, columns))),
  }
}

/** The library that a folder belongs to, which need not be there yet. */
async function libraryAround(world: World, folder: string): Promise<Library> {
  let there = folder
  while ((await world.standing(there)) !== 'folder' && folderOf(there) !== there) there = folderOf(there)
  return libraryOf(await load(world, await contextsOf(world, [{ path: there, isFolder: true }]), []))
}

const cellOf = ({ cells }: Row, columns: readonly Column[], wanted: (column: Column) => boolean) =>
  cells.find((cell, i) => cell !== '' && wanted(columns[i]!))

/** The file name that the row gives, or one made of the name of the record. */
function nameOf(row: Row, columns: readonly Column[], kind: RecordKind): string {
  const file = cellOf(row, columns, ({ is }) => is === 'file')
  if (file !== undefined) {
    const record = recordOfPath(file)
    return record?.kind === kind
      ? record.id
      : stemOf(file.slice(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1))
  }
  const name = cellOf(row, columns, (column) => column.is === 'field' && column.place.pointer === '/name')
  return name === undefined ? `row-${row.line}` : stemOf(name)
}

function textOf(
  kind: RecordKind,
  { cells, line }: Row,
  columns: readonly Column[],
  { hasDecimalCommas }: Rows,
  from: string,
) {
  const filled = columns.flatMap((column, i) =>
    column.is === 'field' && cells[i] !== '' ? [{ place: column.place, text: cells[i]! }] : [],
  )
  const others = columns.flatMap(({ heading, is }, i) =>
    is === 'unknown' && cells[i] !== ''
      ? [`# not in a field, ${from}:${line}: ${visible(`${heading}: ${cells[i]}`)}\n`]
      : [],
  )
  return recordText(schemas[kind]!, filled, hasDecimalCommas) + others.join('')
}

function mustDiffer(drafts: readonly { readonly path: string; readonly row: Row }[], from: string): void {
  const lines = new Map<string, number>()
  for (const { path, row } of drafts) {
    // for many disks a capital is a small letter
    const before = lines.get(path.toLowerCase())
    if (before !== undefined)
      throw new CouldNotRun(
        `rows ${before} and ${row.line} of ${from} would both be \`${path.slice(path.lastIndexOf('/') + 1)}\``,
      )
    lines.set(path.toLowerCase(), row.line)
  }
}

/** What is missing is left to `check`: a table seldom has a column for everything. */
const found = (library: Library, path: string, today: string): readonly Finding[] =>
  (checkFile(library, path, { today })?.findings ?? []).filter(({ severity }) => severity !== 'hint')

function reported(
  { pointer, severity, rule, message }: Finding,
  from: string,
  { line }: Row,
  columns: readonly Column[],
) {
  const at = columns.find((column) => column.is === 'field' && isIn(column.place.pointer, pointer))
  return `${from}:${line}:${at ? ` ${visible(at.heading)}:` : ''} ${severity} ${rule}: ${visible(message)}`
}

const isIn = (column: string, pointer: string) => pointer === column || pointer.startsWith(`${column}/`)
