import { readQuantity } from '../quantities/read.ts'
import { childPointer } from '../text/pointer.ts'
import { spelledScalar } from '../text/spelling.ts'
import type { ListNode, MapNode, Node, ScalarNode } from '../text/tree.ts'
import type { FieldInfo } from './field-info.ts'
import { inYears, monthNamed, monthsIn, truthOf } from './plain-words.ts'
import { hasSides, sidesIn, type Side } from './sides.ts'

/** What a text on one line stands for where a group, a list or a bare number belongs. */
export interface OneLine {
  readonly node: Node
  /** As the schema has it: `{ in_series: 2, in_parallel: 2 }`. */
  readonly text: string
  /** The sides of a size. */
  readonly sides?: readonly Side[]
}

/** Whether a text may be such a line; most are what the schema expects. */
export const isMaybeOneLine = ({ text }: ScalarNode, info: FieldInfo): boolean =>
  info.type === 'group' ||
  info.type === 'list' ||
  (info.type === 'boolean' && text !== 'true' && text !== 'false') ||
  ((info.type === 'number' || info.type === 'integer') && !/^\d+(?:\.\d+)?$/.test(text))

/** `2s2p`, `289 USD` for a price, `12/24 V` for a list, `2 years` for a number of them; null for what is none of these. */
export function oneLine(typed: ScalarNode, info: FieldInfo, pointer: string): OneLine | null {
  if (info.type === 'list') return list(typed, itemsIn(typed.text, info), pointer)
  if (info.type === 'group') {
    const sides = hasSides(info) ? sidesIn(typed.text) : null
    const parts = sides ?? wired(typed.text, info) ?? only(typed.text, info)
    return parts && { ...group(typed, parts, pointer), ...(sides && { sides }) }
  }
  const value = bareValue(typed.text, info)
  return value === null ? null : { node: { ...typed, pointer, text: value, style: 'plain' }, text: value }
}

const bareValue = (text: string, { type, key, title }: FieldInfo): string | null => {
  if (type === 'boolean') return truthOf(text)
  if (title === 'month') return monthNamed(text)
  if (key === 'years') return inYears(text)
  return /^(\d+) ?(?:x|cells?|diodes?|pcs|pieces|panels?|strings?)$/i.exec(text)?.[1] ?? null
}

type Part = Pick<Side, 'key' | 'text' | 'start' | 'end'>

/** `2s2p`, `2S 3P`: as installers write how panels and cells are wired. */
function wired(text: string, { fields = [] }: FieldInfo): readonly Part[] | null {
  const keys = { s: 'in_series', p: 'in_parallel' }
  if (!Object.values(keys).every((key) => fields.some((field) => field.key === key))) return null
  const parts = [...text.matchAll(/(?<!\d)(\d+) ?([sp])/gi)].map(
    ({ 1: count = '', 2: letter = '', index, 0: whole }) => ({
      key: keys[letter.toLowerCase() as 's' | 'p'],
      text: count,
      start: index,
      end: index + whole.length,
    }),
  )
  const isWhole = /^\d+ ?s ?[x×,/]? ?\d+ ?p$|^\d+ ?p ?[x×,/]? ?\d+ ?s$/i.test(text)
  return isWhole ? parts.sort((a, b) => b.key.localeCompare(a.key)) : null
}

/** The one field of a group that takes the whole text. */
function only(text: string, { fields = [] }: FieldInfo): readonly Part[] | null {
  const takes = fields.filter((field) => {
    // which dollar it is, the amount itself says
    if (field.quantity === 'money' && /^[$€£] ?\d/.test(text)) return true
    if (field.quantity) return readQuantity(text, field.quantity).quantity !== undefined
    if (field.key === 'years') return inYears(text) !== null
    return field.type === 'reference' ? /^[a-z\d]+(?:-[a-z\d]+)+$/.test(text) : isPath(text) && field.key === 'source'
  })
  const [field] = takes.length === 1 ? takes : []
  if (!field) return null
  return [{ key: field.key, text: field.key === 'years' ? inYears(text)! : text, start: 0, end: text.length }]
}

const isPath = (text: string) => /^\S+\.pdf$/i.test(text)

/** `12/24 V`, `May to September`: the items of a list on one line. */
function itemsIn(text: string, { key, item }: FieldInfo): readonly Part[] | null {
  if (key === 'months')
    return monthsIn(text)?.map((month) => ({ key: '', text: month, start: 0, end: text.length })) ?? null
  const kind = item?.quantity
  if (!kind || !/\d ?[/,&]|\band\b/.test(text)) return null
  const unit = /(?<![A-Za-zµ%°])[A-Za-zµ%°]+$/.exec(text)?.[0] ?? ''
  let start = 0
  const parts = text.split(/[/,&]| and /).map((part) => {
    const from = text.indexOf(part, start)
    start = from + part.length
    const bare = part.trim()
    return { key: '', text: bare.endsWith(unit) ? bare : `${bare} ${unit}`, start: from, end: start }
  })
  return parts.every((part) => readQuantity(part.text, kind).quantity) ? parts : null
}

/** Commas and brackets have quotes inside of { } and [ ]. */
const spelled = (text: string) => spelledScalar(text, 'plain', true)

function group(typed: ScalarNode, parts: readonly Part[], pointer: string): OneLine {
  const entries = parts.map((part) => {
    const value = scalar(typed, part, childPointer(pointer, part.key))
    return { key: part.key, keySpan: value.span, pointer: value.pointer, colon: null, value }
  })
  const node: MapNode = { kind: 'map', pointer, span: typed.span, entries, flow: true }
  return { node, text: `{ ${parts.map(({ key, text }) => `${key}: ${spelled(text)}`).join(', ')} }` }
}

function list(typed: ScalarNode, parts: readonly Part[] | null, pointer: string): OneLine | null {
  if (!parts) return null
  const items = parts.map((part, i) => scalar(typed, part, childPointer(pointer, i)))
  const node: ListNode = { kind: 'list', pointer, span: typed.span, items, flow: true }
  return { node, text: `[${parts.map(({ text }) => spelled(text)).join(', ')}]` }
}

function scalar({ span, style }: ScalarNode, { text, start, end }: Part, pointer: string): ScalarNode {
  const at = style === 'plain' ? span.start : span.start + 1
  return { kind: 'scalar', pointer, span: { start: at + start, end: at + end }, text, style: 'plain' }
}
