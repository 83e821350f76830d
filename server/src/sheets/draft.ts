import { isPerCell } from '../quantities/per-cell.ts'
import { schemas } from '../records/schemas.generated.ts'
import { skeleton, type Given } from '../records/skeleton.ts'
import type { SheetModel } from './sheet.ts'

/** Where a draft says that it was read. */
export interface DraftSource {
  readonly source: string
  readonly sha256: string
  /** Whether the sheet has other models beside this one. */
  readonly several: boolean
  /** The date, year-month-day. */
  readonly today: string
}

/** A panel record with every value that its sheet is certain of, each with its page; the rest as in a skeleton. */
export function draftOf(
  { name, page: own, readings }: SheetModel,
  { source, sha256, several, today }: DraftSource,
): string {
  const given = new Map<string, Given>()
  const put = (pointer: string, text: string, note: string) => given.set(pointer, { text, note })
  if (name && name !== `page ${own}`) put('/name', quoted(name), 'as the sheet heads it')
  const hasCells = readings.some(({ field }) => field === '/cells/in_series')
  for (const { field, typed, page, label } of readings)
    if (!isPerCell(typed) || hasCells) put(field, typed, `page ${page}${label ? `: ${oneLine(label)}` : ''}`)
  put('/datasheet/source', quoted(source), 'the sheet')
  const page = readings.find(({ field }) => field === '/stc/pmax')?.page
  if (page !== undefined) put('/datasheet/page', String(page), 'the page with the ratings')
  if (several) put('/datasheet/model', quoted(name), 'the column or row of the sheet')
  put('/datasheet/sha256', `"${sha256}"`, 'notices a sheet that was replaced')
  put('/datasheet/typed_by', 'sheet', 'read by a program: look at the sheet, then put your initials here')
  put('/datasheet/typed_on', today, 'when it was read')
  return skeleton(schemas.panel!, given)
}

const oneLine = (text: string) => text.replace(/[\s\p{Cc}]+/gu, ' ').slice(0, 60)

/** As a YAML scalar; in quotes where it would read as something else. */
const quoted = (text: string): string =>
  /^[A-Za-z][\w .,/()+-]*$/.test(text) && !/^(?:true|false|null|yes|no)$/i.test(text) && !/[: ]$/.test(text)
    ? text
    : JSON.stringify(oneLine(text))
