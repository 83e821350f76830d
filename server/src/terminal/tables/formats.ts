import { guarded } from '../../rows/guard.ts'
import { csvText, inMarkdown, markdownText } from '../../rows/write-rows.ts'
import type { Column } from './column.ts'
import { fittedTable } from './fitted-table.ts'

/** One table for a terminal of that width. */
export const toText = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], width: number): string =>
  fittedTable([columns.map(({ label }) => label), ...texts(rows, columns)], width)

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

export const toMarkdown = <Row>(rows: readonly Row[], columns: readonly Column<Row>[]): string =>
  markdownText([columns.map(({ label }) => label), ...texts(rows, columns)])

/** A sentence of its own below a table. */
export const noteInMarkdown = (text: string): string => `${inMarkdown(text)}\n`

const texts = <Row>(rows: readonly Row[], columns: readonly Column<Row>[]) =>
  rows.map((row) => columns.map(({ cell }) => cell(row).text))
