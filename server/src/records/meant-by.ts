import { phrase } from '../wording/phrase.ts'
import { looksLikeDigits } from '../quantities/misread.ts'
import type { Proposed } from '../findings/make.ts'
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
    case 'date': {
      const [, year, month, day] = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})$/.exec(typed) ?? []
      return year && month && day ? `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}` : null
    }
    default:
      return null
  }
}

/** One text, or several parted by commas, where a list of texts belongs; null for what is no such case. */
export function asList(node: Node, info: FieldInfo | null): readonly Proposed[] | null {
  if (node.kind !== 'scalar' || node.style !== 'plain' || info?.type !== 'list' || info.item?.type !== 'text')
    return null
  if (!/^[\w .,/+()-]+$/.test(node.text)) return null
  const text = `[${node.text}]`
  return [
    { pointer: node.pointer, text, why: phrase`as a list`, certainty: 'guess', edits: [{ span: node.span, text }] },
  ]
}
