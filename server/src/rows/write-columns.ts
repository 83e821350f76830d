import { translated, type Bundle } from '../wording/bundle.ts'
import { phraseInWords } from '../wording/phrase.ts'
import type { Column } from './cell.ts'
import { markdownText } from './write-rows.ts'

export const toMarkdown = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], bundle?: Bundle): string =>
  markdownText(textsOf(rows, columns, bundle))

/** The head and the rows; what stands where nothing is known is a word of our own. */
export const textsOf = <Row>(rows: readonly Row[], columns: readonly Column<Row>[], bundle: Bundle | undefined) => [
  columns.map(({ label }) => (typeof label === 'string' ? translated(label, bundle) : phraseInWords(label, bundle))),
  ...rows.map((row) =>
    columns.map(({ cell }) => {
      const { value, text } = cell(row, bundle)
      return value === null ? translated(text, bundle) : text
    }),
  ),
]
