import { guarded } from '../../rows/guard.ts'
import { csvText, inMarkdown, markdownText } from '../../rows/write-rows.ts'
import type { Column } from './column.ts'
import { fittedTable } from './fitted-table.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'

/** Where a table is shown: how wide it may be, and in which language. */
export interface Shown {
  readonly width: number
  readonly bundle?: Bundle | undefined
}

/** One table for a terminal of that width. */
export const toText = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], { width, bundle }: Shown): string =>
  fittedTable(texts(rows, columns, bundle), width)

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

export const toMarkdown = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], bundle?: Bundle): string =>
  markdownText(texts(rows, columns, bundle))

/** A sentence of its own below a table. */
export const noteInMarkdown = (text: string): string => `${inMarkdown(text)}\n`

/** The head and the rows; what stands where nothing is known is a word of our own. */
const texts = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], bundle: Bundle | undefined) => [
  columns.map(({ label }) => translated(label, bundle)),
  ...rows.map((row) =>
    columns.map(({ cell }) => {
      const { value, text } = cell(row, bundle)
      return value === null ? translated(text, bundle) : text
    }),
  ),
]
