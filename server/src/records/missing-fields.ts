import { inARow, phrase, type Phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { groupBy } from '../text/group.ts'
import { parentPointer } from '../text/pointer.ts'
import type { Span } from '../text/span.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'
import { reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import { infoAt } from './info-at.ts'

/**
 * Required fields that are not there: one finding for each group, on its key. Those that stand empty are reported together on
 * the first of them, for somebody is about to fill them in.
 */
export function missingFields(pointers: readonly string[], root: FieldInfo, tree: Tree): readonly Finding[] {
  const missing = pointers.filter((pointer) => !isReason(pointer))
  const isOpen = (pointer: string) => entryAtPointer(tree, pointer) !== null
  const open = missing.filter(isOpen).sort((a, b) => keySpan(a, tree).start - keySpan(b, tree).start)
  return [
    ...byGroup(missing.filter((pointer) => !isOpen(pointer))).map((fields) => absent(fields, root, tree)),
    ...(open.length > 0 ? [unfilled(open, root, tree)] : []),
  ]
}

/** An acceptance without a reason has a finding of its own. */
const isReason = (pointer: string) => /^\/accepted\/\d+\/because$/.test(pointer)

function absent(fields: readonly string[], root: FieldInfo, tree: Tree): Finding {
  const group = parentPointer(fields[0]!)
  const key = groupKey(group)
  const from = key ? phrase`under ${key}` : phrase`from the record`
  const names = named(fields.map(keyOf))
  const message =
    fields.length > 1
      ? phrase`${names} are missing ${from}${such(fields, root)}.`
      : phrase`${names} is missing ${from}${such(fields, root)}.`
  return finding(reading.missingField, { pointer: group, span: placeOf(group, tree) }, message)
}

function unfilled(fields: readonly string[], root: FieldInfo, tree: Tree): Finding {
  const first = fields[0]!
  const groups = byGroup(fields).map((own) => {
    const key = groupKey(parentPointer(own[0]!))
    return key ? phrase`${named(own.map(keyOf))} under ${key}` : named(own.map(keyOf))
  })
  const message =
    fields.length > 1
      ? phrase`Still to be filled in: ${inARow(groups, '; ')}.`
      : phrase`${keyOf(first)} has no value yet${such(fields, root)}.`
  return finding(reading.missingField, { pointer: first, span: keySpan(first, tree) }, message, {
    severity: isBegun(root, tree) ? undefined : 'information',
  })
}

/** Until something that is required stands there, beside a name, it is a form to be filled in and no record yet. */
function isBegun(group: FieldInfo, tree: Tree, pointer = ''): boolean {
  return (group.fields ?? []).some((field) => {
    const own = `${pointer}/${field.key}`
    if (!field.required || own === '/format' || own === '/name') return false
    return field.type === 'group' ? isBegun(field, tree, own) : nodeAtPointer(tree, own) !== null
  })
}

const byGroup = (pointers: readonly string[]) => [...groupBy(pointers, parentPointer).values()]

const keyOf = (pointer: string) => pointer.slice(pointer.lastIndexOf('/') + 1)

/** stc; the list's key for an item of a list; undefined at the top */
const groupKey = (pointer: string) => pointer.split('/').findLast((step) => /\D/.test(step))

/** `, such as voc: 22.1 V`, where there is but one */
function such([pointer, second]: readonly string[], root: FieldInfo): Phrase | undefined {
  const example = second === undefined ? infoAt(root, pointer!)?.examples?.[0] : undefined
  return example ? phrase`, such as ${keyOf(pointer!)}: ${example}` : undefined
}

const keySpan = (pointer: string, tree: Tree): Span => entryAtPointer(tree, pointer)?.keySpan ?? { start: 0, end: 0 }

/** The group's key; the first key of the group where it has none of its own, as in a list and at the top. */
function placeOf(group: string, tree: Tree): Span {
  const entry = entryAtPointer(tree, group)
  const node = nodeAtPointer(tree, group)
  const first = node?.kind === 'map' ? node.entries[0] : undefined
  return entry?.keySpan ?? first?.keySpan ?? node?.span ?? { start: 0, end: 0 }
}

/** length, width and thickness */
const named = (words: readonly string[]): string | Phrase =>
  words.length < 2 ? words.join('') : phrase`${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
