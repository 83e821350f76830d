import { translated, type Bundle } from '../wording/bundle.ts'
import type { Column } from './cell.ts'
import { markdownText } from './write-rows.ts'

export const toMarkdown = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], bundle?: Bundle): string =>
  markdownText(textsOf(rows, columns, bundle))

/** The head and the rows; what stands where nothing is known is a word of our own. */
export const textsOf = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], bundle: Bundle | undefined) => [
  columns.map(({ label }) => translated(label, bundle)),
  ...rows.map((row) =>
    columns.map(({ cell }) => {
      const { value, text } = cell(row, bundle)
      return value === null ? translated(text, bundle) : text
    }),
  ),
]
