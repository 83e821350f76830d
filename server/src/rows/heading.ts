import { conceptsIn, conditionIn } from '../records/concepts.ts'
import type { FieldInfo } from '../records/field-info.ts'
import { infoAt } from '../records/info-at.ts'
import { fieldNamedIn, plainly } from '../records/other-words.ts'
import { synonymOf } from '../records/synonyms.ts'
import { unitOfKind } from '../quantities/unit-text.ts'
import { childPointer } from '../text/pointer.ts'
import { pointerOf } from './cells.ts'

/** The field that a column holds, and the unit of its bare numbers where the heading names one. */
export interface NamedField {
  readonly pointer: string
  readonly info: FieldInfo
  readonly unit?: string
}

/** Names of columns that say which file a row is, and no field of the record. */
export const nameColumns: readonly string[] = ['file', 'record', 'id']

/**
 * The field that a heading names: by its path (`stc.voc`), by its name or another word for it, or by its label in any language of
 * datasheets, with the unit behind it (`Voc (V)`, `voc_v`, `Kurzschlussstrom [A]`). Of a rating without a word more, that at
 * standard conditions.
 *
 * @param root  the kind of record
 */
export function namedFieldOf(heading: string, root: FieldInfo): NamedField | null {
  const info = /^[\w./-]+$/.test(heading) ? infoAt(root, pointerOf(heading)) : null
  if (info && info !== root && isCell(info)) return { pointer: pointerOf(heading), info }
  const { name, unit } = split(heading)
  const groups = inOrder(heading, root)
  // another word for a field says more than a label of many words, wherever the field is
  for (const named of [ownName, fieldNamedIn])
    for (const { group, pointer } of groups) {
      const field = leading(named(withoutGroup(name, group), group), pointer)
      if (field && unit === undefined) return field
      const found = field && unitOf(field, unit!)
      if (found) return { ...field, unit: found.symbol }
    }
  // what looks like a unit may be a part of the name
  return unit === undefined || /[()[\]]/.test(heading) ? null : namedFieldOf(`${heading} ()`, root)
}

const unitOf = ({ info: { key, quantity: kind = key === 'size' ? 'length' : undefined } }: NamedField, unit: string) =>
  kind ? unitOfKind(unit, kind) : null

/** The field whose name, or another word for it, is one of the words or all of them. */
function ownName(name: string, group: FieldInfo): FieldInfo | null {
  const fields = group.fields ?? []
  const keys = fields.map(({ key }) => key)
  const words = plainly(name)
  const found = [words, ...(groupsOfRatings.has(group.key) ? words.split('_') : [])].flatMap((word) =>
    keys.includes(word) ? word : (synonymOf(word, keys) ?? greek.get(`${group.key} ${word}`) ?? []),
  )
  return fields.find(({ key }) => key === found[0]) ?? null
}

/** The usual letters of the coefficients (IEC 60891). */
const greek = new Map([
  ['temperature_coefficients alpha', 'isc'],
  ['temperature_coefficients beta', 'voc'],
  ['temperature_coefficients gamma', 'pmax'],
])

/** These are only looked into where the heading speaks of them, so that one word of it is enough. */
const groupsOfRatings: ReadonlySet<string> = new Set(['temperature_coefficients', 'noct'])

const isCell = ({ type }: FieldInfo) => type !== 'group' && type !== 'map'

/** `Voc (V)`, `Voc [V]`, `voc_v` and `Voc V`. */
function split(heading: string): { readonly name: string; readonly unit?: string } {
  if (/[)\]]$/.test(heading)) {
    const open = Math.max(heading.lastIndexOf('('), heading.lastIndexOf('['))
    const [name, unit] = [heading.slice(0, Math.max(0, open)).trim(), heading.slice(open + 1, -1).trim()]
    return unit === '' ? { name } : { name, unit }
  }
  const [, name, unit] = /^(.+[^_ ])[_ ]([A-Za-z%°²/]{1,8})$/.exec(heading) ?? []
  return name === undefined ? { name: heading } : { name, unit: unit! }
}

interface Group {
  readonly group: FieldInfo
  readonly pointer: string
}

/** The record itself and its groups, those first that the heading speaks of; some are the only ones then, and else in no question. */
function inOrder(heading: string, root: FieldInfo): readonly Group[] {
  const groups = (root.fields ?? [])
    .filter(({ type }) => type === 'group')
    .map((group) => ({ group, pointer: childPointer('', group.key) }))
  const says = conceptsIn(heading)
  const spoken = new Map([
    ['temperature_coefficients', says.has('coefficient') || /^(?:alpha|beta|gamma)\b|^tc[ _]/i.test(heading)],
    ['noct', conditionIn(heading) === 'noct'],
    ['limits', says.has('fuse') || (says.has('system') && says.has('voltage'))],
  ])
  const only = groups.filter(({ group }) => spoken.get(group.key))
  const record = { group: root, pointer: '' }
  if (only.length > 0) return [...only, record]
  const open = groups.filter(({ group }) => !groupsOfRatings.has(group.key))
  const named = open.filter(({ group }) => withoutGroup(heading, group) !== heading)
  return [...named, record, ...open]
}

/** `noct_voc` in the group `noct` is `voc`. */
function withoutGroup(name: string, { key }: FieldInfo): string {
  if (key === '' || plainly(name) === key) return name
  const rest = name.replace(new RegExp(`^${key}[ _]|[ _]${key}$`, 'i'), '')
  return rest.replace(/ at$/i, '')
}

/** Of a group the field that its name alone speaks of: the amount of a price, the temperature of NOCT; a size is one text, too. */
function leading(field: FieldInfo | null, parent: string): NamedField | null {
  if (!field) return null
  const pointer = childPointer(parent, field.key)
  if (isCell(field) || field.key === 'size') return { pointer, info: field }
  const first = field.fields?.find(({ key }) => leads.includes(key))
  return first ? { pointer: childPointer(pointer, first.key), info: first } : null
}

const leads = ['amount', 'temperature', 'source']
