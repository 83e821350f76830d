import { phrase } from '../wording/phrase.ts'
import { looksLikeDigits } from '../quantities/misread.ts'
import type { Proposed } from '../findings/make.ts'
import { isDay } from './dates.ts'
import { setScalar } from '../text/edits.ts'
import type { Node, Tree } from '../text/tree.ts'
import type { FieldInfo } from './field-info.ts'

/** What a value of the wrong shape most likely stands for: `36.0` or `"36"` cells, `2026/10/4`. */
export function meantBy(node: Node, info: FieldInfo | null, tree: Tree): readonly Proposed[] {
  if (node.kind !== 'scalar') return []
  const misread = info?.type === 'integer' ? looksLikeDigits(node.text)?.[0] : undefined
  const text = misread ? misread.text : fix(node.text, info)
  if (text === null) return []
  // a number or a word in quotes would be a text again
  const edits = [info?.type === 'date' ? setScalar(tree, node.pointer, text) : { span: node.span, text }]
  return [
    { pointer: node.pointer, text, why: misread?.why ?? phrase`as it is written here`, certainty: 'guess', edits },
  ]
}

function fix(typed: string, info: FieldInfo | null): string | null {
  switch (info?.type) {
    case 'integer':
      return /^(\d+)(?:\.0+)?$/.exec(typed)?.[1] ?? null
    case 'number':
      return /^\d+(?:\.\d+)?$/.exec(typed)?.[0] ?? null
    case 'boolean':
      return /^(?:true|false)$/i.test(typed) ? typed.toLowerCase() : null
    case 'date':
      return dayMeant(typed)
    default:
      return null
  }
}

/** `2026/10/4`, `4.10.2026`, `4 Oct 2026`; with strokes, whether the day or the month is first is anybody's guess. */
function dayMeant(typed: string): string | null {
  const [, first, second, third] = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})$/.exec(typed) ?? []
  const [, day, month, year] = /^(\d{1,2})[.] ?(\d{1,2})[.] ?(\d{4})$/.exec(typed) ?? []
  const [, date, name, of] = /^(\d{1,2})[ .-]+([A-Za-z]{3})[a-z]*[ .,-]+(\d{4})$/.exec(typed) ?? []
  const named = months.indexOf(name?.toLowerCase() ?? '') + 1
  const parts = first ? [first, second, third] : day ? [year, month, day] : named > 0 ? [of, String(named), date] : null
  const text = parts?.map((part) => part!.padStart(2, '0')).join('-')
  return text !== undefined && isDay(text) ? text : null
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

/** A list in brackets, or one of its items alone, where a list belongs; null for what is no such case. */
export function asList(node: Node, info: FieldInfo | null, tree: Tree): readonly Proposed[] | null {
  if (info?.type !== 'list') return null
  const { span, pointer } = node
  const why = phrase`as a list`
  if (node.kind === 'map' && node.flow && info.item?.type === 'group') {
    const text = `[${tree.text.slice(span.start, span.end)}]`
    return [{ pointer, text: text.length <= 80 ? text : '', why, certainty: 'guess', edits: [{ span, text }] }]
  }
  if (node.kind !== 'scalar' || node.style !== 'plain' || info.item?.type !== 'text') return null
  if (!/^[\w .,/+()-]+$/.test(node.text)) return null
  const inner = /^\(([^()]*)\)$/.exec(node.text)?.[1] ?? node.text
  const typed = tree.text.slice(span.start, span.end)
  const text = `[${
    /[\r\n]/.test(typed)
      ? typed
          .split(/[\r\n]+/)
          .map((line) => line.trim().replace(/,$/, ''))
          .join(', ')
      : inner
  }]`
  return [{ pointer, text, why, certainty: 'guess', edits: [{ span, text }] }]
}
