import { lastQuestion, leading, notesOn, questions } from '../check/panel-columns.ts'
import { siteFor } from '../check/site.ts'
import { correctFirst, withErrors } from '../check/with-errors.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Column } from '../rows/cell.ts'
import { inMarkdown } from '../rows/write-rows.ts'
import { toMarkdown } from '../rows/write-columns.ts'
import { sideBySide, type SideBySide } from '../values/side-by-side.ts'
import { translated, type Bundle } from '../wording/bundle.ts'

/**
 * Panels side by side, a table for each of the questions of somebody who chooses one, as Markdown. Those whose records have errors
 * are marked, and named before all tables.
 *
 * @param today  year-month-day
 */
export function panelsCompared(
  library: Library,
  panels: readonly ReadFile<'panel'>[],
  today: string,
  bundle: Bundle | undefined,
): string {
  const rows = panels.map(({ id, record, path }) =>
    sideBySide(id, record, siteFor(library, path), library.settings(path)?.record),
  )
  const wrong = withErrors(library, panels, today)
  const first = marked(leading, new Set(wrong))
  const tables = [...questions, lastQuestion].map(
    ({ question, columns }) =>
      `## ${inMarkdown(translated(question, bundle))}\n\n${toMarkdown(rows, [first, ...columns], bundle)}`,
  )
  const inError = correctFirst(wrong, bundle).map((note) => `* ${note}`)
  const asNotes = (notes: readonly string[]) => notes.map((note) => `${inMarkdown(note)}\n`)
  return [...asNotes(inError), ...tables, ...asNotes(notesOn(rows, bundle))].join('\n')
}

function marked(column: Column<SideBySide>, ids: ReadonlySet<string>): Column<SideBySide> {
  return {
    ...column,
    cell(row, bundle) {
      const cell = column.cell(row, bundle)
      return ids.has(row.answers.panel) ? { ...cell, text: `${cell.text} *` } : cell
    },
  }
}
