import type { Checked } from '../check/checked.ts'
import type { FieldInfo } from '../records/field-info.ts'
import { infoAt } from '../records/info-at.ts'
import { schemas } from '../records/schemas.generated.ts'
import { shapeOf } from '../records/shape.ts'
import { lineAround } from '../text/lines.ts'
import { parentPointer } from '../text/pointer.ts'
import { readTree } from '../text/read-tree.ts'
import type { Span } from '../text/span.ts'
import { isJson } from '../text/spelling.ts'
import { inventory } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'

/** A place where a person types: which field belongs there, and which characters a proposal replaces. */
export interface Slot {
  readonly kind: 'key' | 'value'
  readonly span: Span
  /** key: the group that the key is for; value: the field itself */
  readonly info: FieldInfo
  /** Of the group, or of the field. */
  readonly pointer: string
  /** Keys that the group has already. */
  readonly present: ReadonlySet<string>
  /** What stands between the start of the span and the cursor. */
  readonly typed: string
  readonly flow: boolean
  readonly json: boolean
  /** key: a colon follows already. value: a blank must come first. */
  readonly hasColon: boolean
  readonly needsBlank: boolean
}

/** No field has this name. */
const stand = 'w__w'

/**
 * Reads the file as if a whole word stood where one is being typed: so the place of a half-typed key or value is found by
 * the same reading as everything else.
 */
export function slotAt({ tree, kind }: Checked, offset: number): Slot | null {
  const root = schemas[kind]
  if (!root || tree.comments.some(({ span }) => span.start < offset && offset <= span.end)) return null
  const flow = isInFlowAt(tree, offset)
  const json = isJson(tree)
  const { start, text: segment } = segmentBefore(tree.text, offset, flow)
  const [, lead, gap] =
    /^((?:"[^"]*"|'[^']*'|[^\s"':]+)[ \t]*:)([ \t]+|$)/.exec(segment) ??
    (json ? /^("[^"]*"\s*:)(\s*)/.exec(segment) : null) ??
    []
  const isValue = lead !== undefined
  const from = start + (isValue ? lead.length + gap!.length : 0)
  const to = offset + restOf(tree.text, offset, isValue, flow)
  const hasColon = !isValue && /^[ \t]*:/.test(tree.text.slice(to))
  const needsBlank = isValue && gap === ''
  const common = { span: { start: from, end: to }, typed: tree.text.slice(from, offset), json, hasColon, needsBlank }
  const about = (pointer: string) => infoAt(root, pointer)
  const word = json ? `"${stand}"` : stand
  const read = (standIn: string) => readTree(tree.text.slice(0, from) + standIn + tree.text.slice(to), shapeOf(kind))
  return isValue
    ? value(read(`${needsBlank ? ' ' : ''}${word}`))
    : (key(read(hasColon ? word : `${word}: 0`)) ?? value(read(word)))

  function key(trial: Tree): Slot | null {
    const held = inventory(trial).entries.find(({ entry }) => entry.key === stand)
    if (!held) return null
    const pointer = parentPointer(held.entry.pointer)
    const info = pointer === '' ? root : about(pointer)
    const group = info?.type === 'reference' && info.record ? schemas[info.record] : info
    if (group?.type !== 'group' && group?.type !== 'map') return null
    const present = new Set(held.map.entries.map((entry) => entry.key))
    return { ...common, kind: 'key', info: group, pointer, present, flow: held.map.flow }
  }

  function value(trial: Tree): Slot | null {
    const scalar = inventory(trial).scalars.find(({ text }) => text === stand)
    const info = scalar && about(scalar.pointer)
    return scalar && info ? { ...common, kind: 'value', info, pointer: scalar.pointer, present: new Set(), flow } : null
  }
}

/** Inside `{ }` or `[ ]`; one that is not closed yet reaches on. */
function isInFlowAt(tree: Tree, offset: number): boolean {
  return inventory(tree).collections.some(({ flow, kind, span }) => {
    const isClosed = tree.text[span.end - 1] === (kind === 'map' ? '}' : ']') && span.end > span.start + 1
    return flow && span.start < offset && (!isClosed || offset < span.end)
  })
}

/** What was typed of one entry or item up to the cursor. */
function segmentBefore(text: string, offset: number, flow: boolean): { start: number; text: string } {
  const { start } = lineAround(text, offset)
  const line = text.slice(start, offset)
  const skipped = flow ? /^(?:.*[{[,])?[ \t]*/.exec(line)! : /^\ufeff?[ \t]*(?:-[ \t]+)*/.exec(line)!
  return { start: start + skipped[0].length, text: line.slice(skipped[0].length) }
}

/** How much of what follows the cursor belongs to the same key or value. */
function restOf(text: string, offset: number, isValue: boolean, flow: boolean): number {
  const rest = text.slice(offset, lineAround(text, offset).end)
  if (!isValue) return /^[\w-]*["']?/.exec(rest)![0].length
  const own = (flow ? /^[^,{}[\]]*/ : /^.*/).exec(rest)![0].replace(/(?:^|[ \t])#.*$/, '')
  return own.trimEnd().length
}
