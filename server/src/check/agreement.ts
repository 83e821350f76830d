import type { Fix, Found } from '../findings/found.ts'
import { reading } from '../records/facts.ts'
import type { Edit } from '../text/span.ts'
import { isSerious } from './shared-fields.ts'

/** Findings of reading whose corrections guess at a number. */
const guessing: ReadonlySet<string> = new Set(
  [reading.unknownUnit, reading.wrongDimension, reading.missingUnit, reading.twoNumbers, reading.noNumber].map(
    ({ id }) => id,
  ),
)

/** Whether reading guessed at the number that a correction puts in. */
export const isGuessed = ({ rule }: Found, { certainty, text }: Fix): boolean =>
  guessing.has(rule.id) && certainty === 'guess' && /\d/.test(text)

/**
 * Whether the rest of a record agrees with a number that reading guessed. Nothing serious may be found of it that was not
 * found before; and a unit put in place of another needs more than silence: ten times as much and a tenth would be noticed.
 *
 * @param typed  the value as it is in the file
 */
export function isBorneOut(
  { rule, pointer }: Found,
  { edits, text }: Fix,
  typed: string,
  judgeWith: (edits: readonly Edit[]) => readonly Found[] | null,
): boolean {
  const before = judgeWith([])
  const contradicted = (change: readonly Edit[]): boolean | null => {
    const after = judgeWith(change)
    return before && after && after.some((one) => speaksOf(one, pointer) && !before.some((old) => isSame(old, one)))
  }
  const adds = text.startsWith(typed)
  const against = contradicted(edits)
  if (against === null) return adds
  if (against || adds || rule.id !== reading.wrongDimension.id) return !against
  return [10, 0.1].every((factor) => contradicted(scaled(edits, factor)) === true)
}

/** Whether rules find more errors after a change, or as many and more warnings. */
export function isWorse(after: readonly Found[], before: readonly Found[]): boolean {
  const errors = (found: readonly Found[]) => found.filter(({ severity }) => severity === 'error').length
  const more = errors(after) - errors(before)
  return more > 0 || (more === 0 && after.filter(isSerious).length > before.filter(isSerious).length)
}

function speaksOf(one: Found, pointer: string): boolean {
  return (
    isSerious(one) &&
    (one.pointer === pointer || one.places.some((place) => place.path === undefined && place.pointer === pointer))
  )
}

const isSame = (a: Found, b: Found) => a.rule.id === b.rule.id && a.pointer === b.pointer && isSerious(a)

/** With the first number of each edit so many times as large; a fraction behind it hardly counts. */
const scaled = (edits: readonly Edit[], factor: number): readonly Edit[] =>
  edits.map((edit) => ({ ...edit, text: edit.text.replace(firstNumber, (number) => times(number, factor)) }))

const firstNumber = /\d+(?:\.\d+)?(?: \d+\/\d+)?/
const times = (number: string, factor: number) => String(Number((Number.parseFloat(number) * factor).toPrecision(6)))
