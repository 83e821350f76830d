import { readQuantity } from '../quantities/read.ts'
import { unitOfKind } from '../quantities/unit-text.ts'
import type { Entry } from '../text/tree.ts'
import type { FieldInfo } from './field-info.ts'
import { fieldNamed } from './label-names.ts'
import { synonymOf } from './synonyms.ts'

/** The field that another word names; where the word holds the unit of a bare number, the value with it. */
export interface Meant {
  readonly field: FieldInfo
  readonly value?: string
}

/** Small letters, one mark between words: `Max. Power` is `max_power`. */
export const plainly = (word: string): string =>
  word
    .toLowerCase()
    .split(/[-. _]/)
    .filter((part) => part !== '')
    .join('_')

/**
 * The field of a group that an unknown key is another word for: the same letters in another case, a synonym, a label as
 * datasheets print it, or one of these with the unit at its end (`weight_kg`). A misspelt key is no such word.
 *
 * @param taken  keys that stand in the group already
 */
export function fieldMeant({ key, value }: Entry, group: FieldInfo, taken: ReadonlySet<string>): Meant | null {
  // a group on one line without its colon
  if (/[{}]/.test(key)) return null
  const free = (group.fields ?? []).filter((field) => !taken.has(field.key))
  const [, name, unit] = /^(.+[^_ ([])[_ ([]([A-Za-z%²]{1,5})[)\]]?$/.exec(key) ?? []
  const field = name === undefined ? null : (free.find((one) => one.key === plainly(name)) ?? named(name, free, group))
  const found = field?.quantity && unit ? unitOfKind(unit, field.quantity) : null
  if (!field || !found || value?.kind !== 'scalar') {
    const whole = isSide(key, value, free) ?? named(key, free, group)
    return whole && suits(key, value, whole) ? { field: whole } : null
  }
  const read = readQuantity(value.text, field.quantity!, field.unit ? { unit: field.unit } : {}).quantity
  if (read && !read.unitDefaulted) return { field }
  return found.symbol === field.unit ? { field } : { field, value: `${value.text} ${found.symbol}` }
}

/** What a type is, its value says: `type: flexible` is the construction, `type: mono` is not. */
const suits = (key: string, value: Entry['value'], field: FieldInfo): boolean =>
  !/^type$/i.test(key) ||
  (value?.kind === 'scalar' &&
    (field.choices?.some((choice) => choice.value === value.text) || choiceMeant(value.text, field) !== null))

/** Sheets call the thickness the height; more than the thickness of a panel is a side. */
function isSide(key: string, value: Entry['value'], free: readonly FieldInfo[]): FieldInfo | undefined {
  if (!/^height$/i.test(key) || value?.kind !== 'scalar') return undefined
  const height = readQuantity(value.text, 'length', { unit: 'mm' }).quantity?.value ?? 0
  return height > 0.1 ? free.find((field) => field.key === 'length' || field.key === 'width') : undefined
}

/** The field of a group that a word names, a label as datasheets print it too. */
export const fieldNamedIn = (word: string, group: FieldInfo): FieldInfo | null => named(word, group.fields ?? [], group)

function named(key: string, free: readonly FieldInfo[], group: FieldInfo): FieldInfo | null {
  const word = plainly(key)
  const same = free.find((field) => plainly(field.key) === word)
  if (same) return same
  const synonym =
    synonymOf(
      word,
      free.map((field) => field.key),
    ) ?? fieldNamed(key, group)
  return free.find((field) => field.key === synonym) ?? null
}

/** The choice that a text is another word for; null for one that is a choice already, or none. */
export function choiceMeant(typed: string, { choices = [] }: FieldInfo): string | null {
  const values = choices.map(({ value }) => value)
  if (values.includes(typed)) return null
  const word = plainly(typed)
  return values.find((value) => plainly(value) === word) ?? synonymOf(word, values) ?? onlyIn(word, values)
}

/** `ETFE film`: the one choice that is a word of it. */
function onlyIn(word: string, values: readonly string[]): string | null {
  const words = word.split('_')
  const found = values.filter((value) => value !== 'other' && words.includes(plainly(value)))
  return words.length <= 3 && !words.includes('no') && !words.includes('not') && found.length === 1 ? found[0]! : null
}
