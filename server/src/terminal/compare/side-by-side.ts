import { siteFor } from '../../check/site.ts'
import { correctFirst, withErrors } from '../../check/with-errors.ts'
import type { ReadFile } from '../../records/read-file.ts'
import { sideBySide } from '../../values/side-by-side.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { select } from '../select.ts'
import { jsonText } from '../visible.ts'
import type { World } from '../world.ts'
import { chosen, filtered, sorted } from '../tables/column.ts'
import { toMarkdown } from '../../rows/write-columns.ts'
import { toCsv, toText } from '../tables/formats.ts'
import { below, besideCsv, filterNote } from '../tables/notes.ts'
import { lastQuestion, leading, notesOn, panelColumns, questions, restsOnLife } from '../../check/panel-columns.ts'
import type { TableOptions } from '../tables/options.ts'
import { translated } from '../../wording/bundle.ts'
import { phrase, sayIn } from '../../wording/phrase.ts'

/** Panels side by side: those that are named, and all of the folders that are. */
export async function panelsSideBySide(
  world: World,
  paths: readonly string[],
  { format, sort, filter, columns: names }: TableOptions,
): Promise<string> {
  const { library, targets } = await select(world, paths)
  const files = targets.map((path) => library.file(path)).filter((file) => file?.kind === 'panel')
  if (files.length === 0)
    throw new CouldNotRun(phrase`there is no panel record in ${paths.map((p) => `\`${p}\``).join(', ')}`)
  const unread = files.filter((file) => file!.unread)
  const say = sayIn(world.bundle)
  for (const file of unread) world.err(`wattproof: ${say`${file!.path} was not read: ${file!.unread!.because}`}\n`)
  const all = (files as readonly ReadFile<'panel'>[])
    .filter((file) => !file.unread)
    .map((file) => {
      const settings = library.settings(file.path)?.record
      return sideBySide(file.id, file.record, siteFor(library, file.path), settings)
    })
  const rows = sorted(filtered(all, panelColumns, filter), panelColumns, sort)
  const columns = chosen(panelColumns, names)
  const shown = new Set(rows.map(({ answers: { panel } }) => panel))
  const wrong = withErrors(
    library,
    (files as readonly ReadFile[]).filter(({ id }) => shown.has(id)),
    world.today,
  )
  const inError = correctFirst(wrong, world.bundle)
  const practice = notesOn(rows, world.bundle)
  if (format === 'json') {
    const notes = [...inError, ...practice]
    return jsonText({
      version: 1,
      rows: rows.map(({ answers }) => answers),
      ...(wrong.length > 0 && { with_errors: wrong }),
      ...(notes.length > 0 && { notes }),
    })
  }
  const notes = [
    ...filterNote(rows.length, all.length, world.bundle),
    ...inError,
    ...(restsOnLife(columns) ? practice : []),
  ]
  if (format === 'csv') {
    besideCsv(world, notes)
    return toCsv(rows, columns)
  }
  const said = below(notes, format, world.width)
  if (format === 'markdown') return [toMarkdown(rows, columns, world.bundle), ...said].join('\n')
  if (rows.length === 0) return said.join('\n')
  if (names !== undefined) return [toText(rows, columns, world), ...said].join('\n')
  return [...questions, lastQuestion]
    .map(
      ({ question, columns }) => `${translated(question, world.bundle)}\n${toText(rows, [leading, ...columns], world)}`,
    )
    .concat(said)
    .join('\n')
}
