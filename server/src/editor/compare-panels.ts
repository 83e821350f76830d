import { lastQuestion, leading, notesOn, questions } from '../check/panel-columns.ts'
import { siteFor } from '../check/site.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import { inMarkdown } from '../rows/write-rows.ts'
import { toMarkdown } from '../rows/write-columns.ts'
import { sideBySide } from '../values/side-by-side.ts'
import { translated, type Bundle } from '../wording/bundle.ts'

/** Panels side by side, a table for each of the questions of somebody who chooses one, as Markdown. */
export function panelsCompared(
  library: Library,
  panels: readonly ReadFile<'panel'>[],
  bundle: Bundle | undefined,
): string {
  const rows = panels.map(({ id, record, path }) =>
    sideBySide(id, record, siteFor(library, path), library.settings(path)?.record),
  )
  return [...questions, lastQuestion]
    .map(
      ({ question, columns }) =>
        `## ${inMarkdown(translated(question, bundle))}\n\n${toMarkdown(rows, [leading, ...columns], bundle)}`,
    )
    .concat(notesOn(rows, bundle).map((note) => `${inMarkdown(note)}\n`))
    .join('\n')
}
