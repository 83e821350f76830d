import type { FieldInfo } from '../records/field-info.ts'
import { infoAt } from '../records/info-at.ts'
import { pointerOf } from './cells.ts'
import { nameColumns, namedFieldOf, type NamedField } from './heading.ts'
import { named, phrase, type Phrase } from '../wording/phrase.ts'

/** What a library says of headings: its setting `columns`. */
export type Meanings = Readonly<Record<string, { readonly value: string }>>

/** A column of a table: the field that it holds, the name of the file, or nothing that a record of this kind has. */
export type Column = { readonly heading: string } & (
  | { readonly is: 'field'; readonly named: NamedField }
  | { readonly is: 'file' | 'left out' }
  | { readonly is: 'unknown'; readonly because: Phrase }
)

/**
 * What the columns of a table hold.
 *
 * @param saved  headings that a library explains: `stc.voc`, `stc.voc V` with the unit of bare numbers, `-` for what is left out
 */
export function columnsOf(headings: readonly string[], root: FieldInfo, saved: Meanings): readonly Column[] {
  const taken = new Map<string, string>()
  return headings.map((heading): Column => {
    const column = columnOf(heading, root, saved)
    if (column.is !== 'field') return column
    const { pointer } = column.named
    const other = taken.get(pointer)
    if (other !== undefined) return { heading, is: 'unknown', because: phrase`it names the same field as ${other}` }
    taken.set(pointer, heading)
    return column
  })
}

/** What one column holds. */
export function columnOf(heading: string, root: FieldInfo, saved: Meanings): Column {
  const said = Object.hasOwn(saved, heading) ? saved[heading]!.value : undefined
  if (said === '-') return { heading, is: 'left out' }
  if (said !== undefined) {
    const [path = '', ...rest] = said.trim().split(/\s+/)
    const unit = rest.join(' ')
    const info = path === '' ? null : infoAt(root, pointerOf(path))
    if (!info)
      return { heading, is: 'unknown', because: phrase`columns of wattproof.yaml says ${said}, which is no field` }
    return { heading, is: 'field', named: { pointer: pointerOf(path), info, ...(unit !== '' && { unit }) } }
  }
  if (heading === '') return { heading, is: 'unknown', because: phrase`it has no heading` }
  if (nameColumns.includes(heading.toLowerCase())) return { heading, is: 'file' }
  const found = namedFieldOf(heading, root)
  return found
    ? { heading, is: 'field', named: found }
    : { heading, is: 'unknown', because: phrase`no field of a ${named(root.title.toLowerCase())} has that name` }
}
