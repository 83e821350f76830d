import { guarded } from '../../rows/guard.ts'
import type { Column } from '../../rows/cell.ts'
import { textsOf } from '../../rows/write-columns.ts'
import { csvText, inMarkdown } from '../../rows/write-rows.ts'
import { fittedTable } from './fitted-table.ts'
import type { Bundle } from '../../wording/bundle.ts'

/** Where a table is shown: how wide it may be, and in which language. */
export interface Shown {
  readonly width: number
  readonly bundle?: Bundle | undefined
}

/** One table for a terminal of that width. */
export const toText = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], { width, bundle }: Shown): string =>
  fittedTable(textsOf(rows, columns, bundle), width)

/**
 * Comma-separated values (RFC 4180): keys as head, numbers bare, and no text that a spreadsheet would take for a formula.
 *
 * @param none  what stands where a value is not known
 */
export function toCsv<Row>(rows: readonly Row[], columns: readonly Column<Row>[], none = 'not known'): string {
  const plain = (value: number | string | null) => (typeof value === 'string' ? guarded(value) : String(value ?? none))
  const lines = rows.map((row) => columns.map(({ cell }) => plain(cell(row).value)))
  return csvText([columns.map(({ key }) => key), ...lines])
}

/** A sentence of its own below a table. */
export const noteInMarkdown = (text: string): string => `${inMarkdown(text)}\n`
