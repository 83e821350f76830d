import type { ReadFile } from '../records/read-file.ts'
import { cellsOf, dotted } from '../rows/cells.ts'
import { guarded } from '../rows/guard.ts'
import { typedPointers } from '../rows/typed-pointers.ts'
import { csvText, markdownText } from '../rows/write-rows.ts'
import type { TableParams, TableResult } from './protocol.ts'
import { sharedFolder } from './shared-folder.ts'

/** What records type, a row for each and a column for each field that any of them fills; files by their path from the folder of all. */
export function tableOf(files: readonly ReadFile[], format: TableParams['format']): TableResult {
  if (files.length === 0) return null
  const records = files.map(({ kind, path, tree }) => ({ kind, path, cells: cellsOf(tree) }))
  const { filled } = typedPointers(records)
  const shared = sharedFolder(records.map(({ path }) => path))
  const rows = records.map(({ path, cells }) => [
    path.slice(shared.length),
    ...filled.map((pointer) => cells.get(pointer) ?? ''),
  ])
  const head = ['file', ...filled.map(dotted)]
  const text =
    format === 'csv' ? csvText([head, ...rows.map((row) => row.map(guarded))]) : markdownText([head, ...rows])
  return { text, rows: rows.length }
}
