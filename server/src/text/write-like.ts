import { lineEnding } from './edit-entries.ts'
import { lineAround } from './lines.ts'
import { isJson, spelledForJson, spelledScalar } from './spelling.ts'
import type { Entry, Node, ScalarNode, Tree } from './tree.ts'

/** What is to be typed: a text, a number, a list, or fields in their order. */
export type Typed = string | number | readonly Typed[] | { readonly [key: string]: Typed }

/**
 * A value as block text whose first line stands at `column` already.
 *
 * @param like  a value of the same kind, whose style is taken over; null for none, and then only the outermost map is a block
 */
export function inBlock(tree: Tree, value: Typed, like: Node | null, column: number): string {
  if (like && like.kind !== 'scalar' && like.flow) return inFlow(tree, value, like)
  if (typeof value !== 'object') return scalar(tree, value, like, false)
  const joint = lineEnding(tree.text) + ' '.repeat(column)
  if (isList(value)) {
    const item = first(like)
    const width = item ? Math.max(2, columnOf(tree.text, item.span.start) - column) : 2
    return value.map((one) => '-'.padEnd(width) + inBlock(tree, one, item, column + width)).join(joint)
  }
  const fields = Object.entries(value).map(([key, one]) => {
    const known = entryOf(like, key)
    const own = known?.value ?? null
    const typedKey = spelledScalar(key, 'plain', false)
    if (typeof one !== 'object') return `${typedKey}:${gap(tree, known)}${scalar(tree, one, own, false)}`
    if (!own || own.kind === 'scalar' || own.flow) return `${typedKey}:${gap(tree, known)}${inFlow(tree, one, own)}`
    const inner = columnOf(tree.text, own.span.start)
    return `${typedKey}:${lineEnding(tree.text)}${' '.repeat(inner)}${inBlock(tree, one, own, inner)}`
  })
  return fields.join(joint)
}

/** A value between brackets, on one line or on as many as `like` has. */
export function inFlow(tree: Tree, value: Typed, like: Node | null): string {
  if (typeof value !== 'object') return scalar(tree, value, like, true)
  const model = like && like.kind !== 'scalar' && like.flow ? like : null
  const parts = isList(value)
    ? value.map((one) => inFlow(tree, one, first(model)))
    : Object.entries(value).map(([key, one]) => {
        const known = entryOf(model, key)
        const typedKey = isJson(tree) ? JSON.stringify(key) : spelledScalar(key, 'plain', true)
        return `${typedKey}:${gap(tree, known)}${inFlow(tree, one, known?.value ?? null)}`
      })
  const [open, close] = isList(value) ? ['[', ']'] : ['{', '}']
  const start = model && startOfFirst(model)
  if (model && start !== null && lineAround(tree.text, start).start > model.span.start) {
    const joint = lineEnding(tree.text) + indentOf(tree.text, start)
    const last = lineEnding(tree.text) + indentOf(tree.text, model.span.end - 1)
    return `${open}${joint}${parts.join(`,${joint}`)}${last}${close}`
  }
  const pad = model ? (tree.text[model.span.start + 1] === ' ' ? ' ' : '') : isList(value) || isTight(tree) ? '' : ' '
  return `${open}${pad}${parts.join(isTight(tree) ? ',' : ', ')}${pad}${close}`
}

/** Whether a file has no blanks that it does not need: JSON as machines write it. */
export const isTight = (tree: Tree): boolean => isJson(tree) && !/[:,]\s/.test(tree.text)

export const columnOf = (text: string, offset: number): number =>
  text.slice(lineAround(text, offset).start, offset).replace(/^\ufeff/, '').length

const isList = (value: Typed): value is readonly Typed[] => Array.isArray(value)

const first = (node: Node | null): Node | null => (node?.kind === 'list' ? (node.items[0] ?? null) : null)

const entryOf = (node: Node | null, key: string): Entry | undefined =>
  node?.kind === 'map' ? node.entries.find((entry) => entry.key === key) : undefined

function startOfFirst(node: Exclude<Node, ScalarNode>): number | null {
  return (node.kind === 'map' ? node.entries[0]?.keySpan.start : node.items[0]?.span.start) ?? null
}

/** What stands between colon and value: blanks that align the values of a file are kept. */
function gap(tree: Tree, entry: Entry | undefined): string {
  const usual = isTight(tree) ? '' : ' '
  if (!entry?.value || entry.colon === null) return usual
  const between = tree.text.slice(entry.colon + 1, entry.value.span.start)
  return /^ +$/.test(between) ? between : usual
}

const indentOf = (text: string, offset: number): string =>
  /^[ \t]*/.exec(text.slice(lineAround(text, offset).start, offset))![0]

function scalar(tree: Tree, value: string | number, like: Node | null, flow: boolean): string {
  if (isJson(tree)) return typeof value === 'number' ? String(value) : spelledForJson(value)
  const style = like?.kind === 'scalar' && like.style !== 'block' && typeof value === 'string' ? like.style : 'plain'
  return spelledScalar(String(value), style, flow)
}
