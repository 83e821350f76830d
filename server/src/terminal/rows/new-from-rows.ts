import { checkFile } from '../../check/check.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Library } from '../../library/library.ts'
import type { RecordKind } from '../../records/field-info.ts'
import type { Column } from '../../rows/columns.ts'
import { draftsFromRows, type RowDraft } from '../../rows/drafts-from-rows.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { contextsOf, libraryOf, load } from '../load.ts'
import { absolute, folderOf } from '../paths.ts'
import { visible } from '../visible.ts'
import { whyNotRead } from '../why-not.ts'
import type { World } from '../world.ts'
import { phrase, type Phrase } from '../../wording/phrase.ts'

/** A record that one row of a table makes, with what is found in it. */
interface Made extends RowDraft {
  readonly path: string
  readonly findings: readonly Finding[]
}

/** The records that the rows of a table make, and what to say about them. */
interface FromRows {
  readonly records: readonly Made[]
  /** Columns that no field takes, a line each. */
  readonly notes: readonly Phrase[]
  /** What is found in the records, by the row and the heading of its cell, a line each. */
  readonly report: readonly string[]
}

/**
 * Makes a record of each row of a table, in a folder.
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
    throw new CouldNotRun(phrase`${from} cannot be read: ${whyNotRead(error)}`)
  })
  const folder = absolute(world.cwd, output ?? '.')
  const library = await libraryAround(world, folder)
  const saved = library.settings(`${folder}/new.${kind}.yaml`)?.record.columns ?? {}
  const made = draftsFromRows(kind, text, from, saved, world.bundle)
  if ('problem' in made) throw new CouldNotRun(made.problem)
  const drafts = made.drafts.map((draft) => ({ ...draft, path: `${folder}/${draft.name}` }))
  for (const { path, text } of drafts) library.put(path, text)
  const records = drafts.map((draft) => ({ ...draft, findings: found(library, draft.path, world) }))
  return {
    records,
    notes: made.notes,
    report: records.flatMap(({ row, findings }) => findings.map((one) => reported(one, from, row.line, made.columns))),
  }
}

/** The library that a folder belongs to, which need not be there yet. */
async function libraryAround(world: World, folder: string): Promise<Library> {
  let there = folder
  while ((await world.standing(there)) !== 'folder' && folderOf(there) !== there) there = folderOf(there)
  return libraryOf(await load(world, await contextsOf(world, [{ path: there, isFolder: true }]), []))
}

/** What is missing is left to `check`: a table seldom has a column for everything. */
const found = (library: Library, path: string, { today, bundle }: World): readonly Finding[] =>
  (checkFile(library, path, { today, bundle })?.findings ?? []).filter(({ severity }) => severity !== 'hint')

function reported(
  { pointer, severity, rule, message }: Finding,
  from: string,
  line: number,
  columns: readonly Column[],
): string {
  const at = columns.find((column) => column.is === 'field' && isIn(column.named.pointer, pointer))
  return `${from}:${line}:${at ? ` ${visible(at.heading)}:` : ''} ${severity} ${rule}: ${visible(message)}`
}

const isIn = (column: string, pointer: string) => pointer === column || pointer.startsWith(`${column}/`)
