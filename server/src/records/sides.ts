import { readQuantity } from '../quantities/read.ts'
import { phrase, type Phrase } from '../wording/phrase.ts'
import type { FieldInfo } from './field-info.ts'

/** One side of a size on one line: which field it is, what that reads, and where it was typed. */
export interface Side {
  readonly key: string
  readonly text: string
  readonly start: number
  readonly end: number
}

const keys = ['length', 'width', 'thickness'] as const
const between = /[x×*]|\bby\b/gi

/**
 * The sides of `1190 x 735 x 2.5 mm`, two or three, each with its unit; null for what is no such text. The same in another
 * unit, in brackets behind it, is left out.
 */
export function sidesIn(whole: string): readonly Side[] | null {
  // the slash of 46 7/8 has a digit before it
  const other = whole.search(/\( ?\d|(?<=[a-z"\s])\/ ?\d/i)
  const text = other > 0 ? whole.slice(0, other).trimEnd() : whole
  const parts: { readonly text: string; readonly start: number; readonly end: number }[] = []
  let start = 0
  for (const { index, 0: joint } of [...text.matchAll(between), { index: text.length, 0: '' }]) {
    const part = text.slice(start, index)
    const from = start + part.length - part.trimStart().length
    parts.push({ text: part.trim(), start: from, end: from + part.trim().length })
    start = index + joint.length
  }
  const unit = /(?<![^\d\s.,/])[^\d\s.,/]+$/.exec(parts.at(-1)!.text)?.[0] ?? ''
  const sides = parts.map(({ text: part, ...place }, i) => ({
    key: keys[i] ?? '',
    text: /[^\d\s.,/]$/.test(part) || unit === '' ? part : `${part} ${unit}`,
    ...place,
  }))
  const isSize = (sides.length === 2 || sides.length === 3) && sides.every((side) => isLength(side.text))
  return isSize ? sides : null
}

const metresOf = (text: string) => readQuantity(text, 'length', { unit: 'mm' }).quantity?.value
const isLength = (text: string) => metresOf(text) !== undefined

/** Whether two texts say the same length, but for rounding. */
export function isSameLength(one: string, other: string): boolean {
  const [a, b] = [metresOf(one), metresOf(other)]
  return a !== undefined && b !== undefined && Math.abs(a - b) <= 0.001 * Math.max(a, b)
}

/** What sides on one line should be. */
export function aFieldEach(sides: readonly Side[]): Phrase {
  const names = sides.map(({ key }) => key)
  return phrase`Give ${names.slice(0, -1).join(', ')} and ${names.at(-1)} a field each: ${sides.map(({ text }) => text).join(', ')}.`
}

/** Whether a group holds the sides of something. */
export const hasSides = ({ fields = [] }: FieldInfo): boolean =>
  ['length', 'width'].every((key) => fields.some((field) => field.key === key))
