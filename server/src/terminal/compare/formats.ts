import type { Column } from './column.ts'
import { fittedTable } from './fitted-table.ts'

/** One table for a terminal of that width. */
export const toText = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], width: number): string =>
  fittedTable([columns.map(({ label }) => label), ...texts(rows, columns)], width)

/**
 * Comma-separated values: keys as head, numbers bare; what is not known says so. A text that a spreadsheet would take for a formula
 * has an apostrophe before it, as has one that begins with an apostrophe, so that taking one off gives the text back.
 */
export function toCsv<Row>(rows: readonly Row[], columns: readonly Column<Row>[]): string {
  const lines = rows.map((row) => columns.map(({ cell }) => plain(cell(row).value)))
  return [columns.map(({ key }) => key), ...lines].map((line) => `${line.map(quoted).join(',')}\n`).join('')
}

const plain = (value: number | string | null): string =>
  typeof value === 'string' ? value.replace(/^(?=[=+\-@\t\r'])/, "'") : String(value ?? 'not known')

/** Quoted where it has to be: RFC 4180. */
const quoted = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

export function toMarkdown<Row>(rows: readonly Row[], columns: readonly Column<Row>[]): string {
  const lines = [columns.map(({ label }) => label), columns.map(() => '---'), ...texts(rows, columns)]
  return lines.map((line) => `| ${line.map(escaped).join(' | ')} |\n`).join('')
}

/** A sentence of its own below a table. */
export const noteInMarkdown = (text: string): string => `${escaped(text)}\n`

const escaped = (text: string) => text.replace(/[\\|<>*_`[\]]/g, '\\$&').replace(/\s+/g, ' ')

const texts = <Row>(rows: readonly Row[], columns: readonly Column<Row>[]) =>
  rows.map((row) => columns.map(({ cell }) => cell(row).text))
