import type { FieldInfo } from '../records/field-info.ts'
import { infoAt } from '../records/info-at.ts'
import { scalarValue } from '../records/plain.ts'
import { readQuantity } from '../quantities/read.ts'
import { readTree } from '../text/read-tree.ts'
import { pointerKeys } from '../text/pointer.ts'
import { quotedScalar, spelledScalar } from '../text/spelling.ts'
import type { NamedField } from './heading.ts'

/** One cell, and the field that it fills. */
export interface Filled {
  readonly named: NamedField
  readonly text: string
}

/**
 * A record with the values of one row, in the order of the schema and with nothing else.
 *
 * @param hasDecimalCommas  in bare numbers
 */
export const recordText = (root: FieldInfo, filled: readonly Filled[], hasDecimalCommas: boolean): string =>
  linesOf(root, new Map([['/format', '1'], ...valuesOf(filled, hasDecimalCommas)]))

/** The lines of these fields alone. */
export const fieldsText = (root: FieldInfo, filled: readonly Filled[]): string =>
  linesOf(root, new Map(valuesOf(filled, false)))

const valuesOf = (filled: readonly Filled[], hasDecimalCommas: boolean) =>
  filled.map(
    ({ named, text }) => [named.pointer, valueText(withUnit(text, named, hasDecimalCommas), named.info)] as const,
  )

/** A bare number with the unit of its column; whatever else stays as it was typed. */
export function withUnit(text: string, { info, unit }: NamedField, hasDecimalCommas = false): string {
  // 1190 x 540 x 2.5
  if (info.key === 'size') return unit !== undefined && /\d$/.test(text) ? `${text} ${unit}` : text
  if (info.type !== 'quantity' && info.type !== 'number') return text
  const number = hasDecimalCommas && commaNumber.test(text) ? text.replaceAll('.', '').replace(',', '.') : text
  if (unit === undefined) return number
  const read = readQuantity(number, info.quantity!, { unit }).quantity
  return read?.unitDefaulted ? `${number} ${unit}` : number
}

/** `22,1`, `-0,38` and `1.190,5`. */
const commaNumber = /^[-+]?(?:\d{1,3}(?:\.\d{3})+|\d+),\d+$/

/** How a text stands behind a colon so that it reads as that text. */
function valueText(text: string, info: FieldInfo): string {
  if (isNested(info) && /^[[{]/.test(text)) {
    const { root, problems } = readTree(text)
    if (root && root.kind !== 'scalar' && problems.length === 0) return text
  }
  if (info.type === 'list' && info.item?.type === 'text')
    return `[${text
      .split(/[;,]/)
      .map((one) => spelledScalar(one.trim(), 'plain', true))
      .join(', ')}]`
  const isWord = info.type === 'text' || info.type === 'choice' || info.type === 'reference'
  const spelled = spelledScalar(text, 'plain', false)
  return isWord && spelled === text && typeof plainValue(text) !== 'string' ? quotedScalar(text) : spelled
}

const isNested = ({ type }: FieldInfo) => type === 'list' || type === 'group' || type === 'map' || type === 'reference'

const plainValue = (text: string) =>
  scalarValue({ kind: 'scalar', pointer: '', span: { start: 0, end: text.length }, text, style: 'plain' })

function linesOf(root: FieldInfo, values: ReadonlyMap<string, string>): string {
  const rank = (pointer: string) => ranks(root, pointer)
  const sorted = [...values].sort(([a], [b]) => order(rank(a), rank(b)))
  const open: string[] = []
  return sorted
    .flatMap(([pointer, text]) => {
      const keys = pointerKeys(pointer)
      const groups = keys.slice(0, -1)
      const shared = groups.findIndex((key, i) => key !== open[i])
      const from = shared === -1 ? groups.length : shared
      const heads = groups
        .slice(from)
        .map((key, i) => `${'  '.repeat(from + i)}${spelledScalar(key, 'plain', false)}:\n`)
      open.splice(0, open.length, ...groups)
      return [...heads, `${'  '.repeat(groups.length)}${spelledScalar(keys.at(-1)!, 'plain', false)}: ${text}\n`]
    })
    .join('')
}

/** Where the schema has a field, group by group. */
function ranks(root: FieldInfo, pointer: string): readonly number[] {
  const keys = pointerKeys(pointer)
  return keys.map((key, i) => {
    const parent = i === 0 ? root : infoAt(root, `/${keys.slice(0, i).join('/')}`)
    const at = parent?.fields?.findIndex((field) => field.key === key) ?? -1
    return at === -1 ? Infinity : at
  })
}

function order(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, i) => one !== b[i])
  return at === -1 ? a.length - b.length : a[at]! - (b[at] ?? -1)
}
