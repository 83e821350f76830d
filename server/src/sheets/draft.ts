import { isPerCell } from '../quantities/per-cell.ts'
import { schemas } from '../records/schemas.generated.ts'
import { skeleton, type Given } from '../records/skeleton.ts'
import type { SheetModel } from './sheet.ts'
import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** Where a draft says that it was read. */
export interface DraftSource {
  readonly source: string
  readonly sha256: string
  /** Whether the sheet has other models beside this one. */
  readonly several: boolean
  /** The date, year-month-day. */
  readonly today: string
  /** Of the language of the comments. */
  readonly bundle?: Bundle | undefined
}

/** A panel record with every value that its sheet is certain of, each with its page; the rest as in a skeleton. */
export function draftOf(
  { name, page: own, readings }: SheetModel,
  { source, sha256, several, today, bundle }: DraftSource,
): string {
  const say = sayIn(bundle)
  const given = new Map<string, Given>()
  const put = (pointer: string, text: string, note: string) => given.set(pointer, { text, note })
  if (name && name !== `page ${own}`) put('/name', quoted(name), say`as the sheet heads it`)
  const hasCells = readings.some(({ field }) => field === '/cells/in_series')
  for (const { field, typed, page, label } of readings)
    if (!isPerCell(typed) || hasCells)
      put(field, typed, label ? say`page ${page}: ${oneLine(label)}` : say`page ${page}`)
  put('/datasheet/source', quoted(source), say`the sheet`)
  const page = readings.find(({ field }) => field === '/stc/pmax')?.page
  if (page !== undefined) put('/datasheet/page', String(page), say`the page with the ratings`)
  if (several) put('/datasheet/model', quoted(name), say`the column or row of the sheet`)
  put('/datasheet/sha256', `"${sha256}"`, say`notices a sheet that was replaced`)
  put('/datasheet/typed_by', 'sheet', say`read by a program: look at the sheet, then put your initials here`)
  put('/datasheet/typed_on', today, say`when it was read`)
  return skeleton(schemas.panel!, given, bundle)
}

const oneLine = (text: string) => text.replace(/[\s\p{Cc}]+/gu, ' ').slice(0, 60)

/** As a YAML scalar; in quotes where it would read as something else. */
const quoted = (text: string): string =>
  /^[A-Za-z][\w .,/()+-]*$/.test(text) && !/^(?:true|false|null|yes|no)$/i.test(text) && !/[: ]$/.test(text)
    ? text
    : JSON.stringify(oneLine(text))
