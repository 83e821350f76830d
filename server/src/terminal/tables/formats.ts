import { stringify } from 'csv-stringify/sync'
import { guarded } from '../../rows/guard.ts'
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
  return stringify([columns.map(({ key }) => key), ...lines], { quoted_match: /^\s|\s$/ })
}

export function toMarkdown<Row>(rows: readonly Row[], columns: readonly Column<Row>[]): string {
  const lines = [columns.map(({ label }) => label), columns.map(() => '---'), ...texts(rows, columns)]
  return lines.map((line) => `| ${line.map(escaped).join(' | ')} |\n`).join('')
}

/** A sentence of its own below a table. */
export const noteInMarkdown = (text: string): string => `${escaped(text)}\n`

const escaped = (text: string) => text.replace(/[\\|<>*_`[\]]/g, '\\$&').replace(/\s+/g, ' ')

const texts = <Row>(rows: readonly Row[], columns: readonly Column<Row>[]) =>
  rows.map((row) => columns.map(({ cell }) => cell(row).text))
