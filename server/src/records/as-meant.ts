import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { renameKey, replaceNode } from '../text/edits.ts'
import { isJson } from '../text/spelling.ts'
import { childPointer } from '../text/pointer.ts'
import type { Entry, MapNode, Node, ScalarNode, Tree } from '../text/tree.ts'
import { phrase } from '../wording/phrase.ts'
import { reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import { fieldName, fieldsByKey } from './info-at.ts'
import { isMaybeOneLine, oneLine, type OneLine } from './one-line.ts'
import { choiceMeant, fieldMeant, type Meant } from './other-words.ts'
import { plain } from './plain.ts'
import { schemas } from './schemas.generated.ts'
import { aFieldEach } from './sides.ts'

/**
 * A tree with the names and the choices of the schema where other words for them were typed: `Voc`, `short circuit current`,
 * `Flexible`. Places stay those of the file; each word has a finding with the one of the schema.
 */
export function asMeant(root: FieldInfo, tree: Tree): { readonly tree: Tree; readonly findings: readonly Finding[] } {
  const renamed: Renamed[] = []
  const meant = tree.root && hasOthers(tree.root, root) ? node(tree.root, root, '', renamed) : null
  if (!meant || renamed.length === 0) return { tree, findings: [] }
  const read = { ...tree, root: meant }
  return { tree: read, findings: renamed.map((one) => said(one, read)) }
}

interface Renamed {
  readonly pointer: string
  readonly typed: string
  readonly node: Node | Entry
  readonly info: FieldInfo
  readonly meant: Meant | null
  readonly value: string | null
  readonly line?: OneLine
}

function said({ pointer, typed, node, info, meant, value, line }: Renamed, tree: Tree): Finding {
  if (line) return inPlaceOf(node as ScalarNode, info, pointer, line, tree)
  if (!meant) {
    const scalar = node as ScalarNode
    const edits = [replaceNode(tree, scalar, value!)]
    return finding(
      reading.otherWord,
      { pointer, span: scalar.span },
      phrase`${fieldName(info)} "${typed}" is read as ${value!}.`,
      {
        corrections: [{ pointer, text: value!, why: phrase`the word of the schema`, certainty: 'same', edits }],
      },
    )
  }
  const { keySpan, value: typedValue } = node as Entry
  const edits = [
    renameKey(tree, pointer, meant.field.key),
    ...(value !== null && typedValue ? [replaceNode(tree, typedValue, value)] : []),
  ]
  return finding(reading.otherWord, { pointer, span: keySpan }, phrase`${typed} is read as ${meant.field.key}.`, {
    corrections: [{ pointer, text: meant.field.key, why: phrase`the name of the schema`, certainty: 'same', edits }],
  })
}

function inPlaceOf(
  { span, text: typed }: ScalarNode,
  info: FieldInfo,
  pointer: string,
  line: OneLine,
  tree: Tree,
): Finding {
  const { sides, node: meant } = line
  const text = isJson(tree) ? JSON.stringify(plain(meant, new Set())) : line.text
  const sentence = sides ? aFieldEach(sides) : phrase`${fieldName(info)} "${typed}" is read as ${line.text}.`
  return finding(sides ? reading.wrongKind : reading.otherWord, { pointer, span }, sentence, {
    severity: 'information',
    corrections: [
      {
        pointer,
        text,
        why: sides ? phrase`a field each` : phrase`as the schema has it`,
        certainty: 'same',
        edits: [{ span, text }],
      },
    ],
  })
}

/** Whether any word may be another one: most files have none, and a file is read again for each fix that is tried. */
function hasOthers(typed: Node, info: FieldInfo): boolean {
  const group = groupOf(typed, info)
  if (typed.kind === 'scalar')
    return info.choices ? info.choices.every(({ value }) => value !== typed.text) : isMaybeOneLine(typed, info)
  if (typed.kind === 'list')
    return typed.items.some((item) => item !== null && group.item !== undefined && hasOthers(item, group.item))
  return typed.entries.some(({ key, value }) => {
    const field = group.fields ? fieldsByKey(group).get(key) : group.item
    return field ? value !== null && hasOthers(value, field) : group.fields !== undefined
  })
}

const groupOf = (typed: Node, info: FieldInfo): FieldInfo =>
  info.type === 'reference' && info.record && typed.kind === 'map' ? schemas[info.record]! : info

function node(typed: Node, info: FieldInfo, pointer: string, renamed: Renamed[]): Node {
  const group = groupOf(typed, info)
  if (typed.kind === 'map' && group.fields) return map(typed, group, pointer, renamed)
  if (typed.kind === 'map' && group.type === 'map' && group.item) return mapOf(typed, group.item, pointer, renamed)
  if (typed.kind === 'list' && group.item) {
    const items = typed.items.map((item, i) => item && node(item, group.item!, childPointer(pointer, i), renamed))
    return { ...typed, pointer, items }
  }
  const line = typed.kind === 'scalar' && isMaybeOneLine(typed, info) ? oneLine(typed, info, pointer) : null
  if (line) {
    renamed.push({ pointer, typed: (typed as ScalarNode).text, node: typed, info, meant: null, value: null, line })
    return line.node
  }
  if (typed.kind !== 'scalar' || !info.choices) return pointed(typed, pointer)
  const value = choiceMeant(typed.text, info)
  if (value === null) return pointed(typed, pointer)
  renamed.push({ pointer, typed: typed.text, node: typed, info, meant: null, value })
  return { ...typed, pointer, text: value }
}

function map(typed: MapNode, group: FieldInfo, pointer: string, renamed: Renamed[]): MapNode {
  const taken = new Set(typed.entries.map(({ key }) => key))
  const entries = typed.entries.map((entry): Entry => {
    const known = group.fields!.find(({ key }) => key === entry.key)
    const meant = known || entry.colon === null ? null : fieldMeant(entry, group, taken)
    const field = known ?? meant?.field
    const own = childPointer(pointer, field?.key ?? entry.key)
    if (!field) return { ...entry, pointer: own, value: entry.value && pointed(entry.value, own) }
    if (!meant) return { ...entry, pointer: own, value: entry.value && node(entry.value, field, own, renamed) }
    taken.add(field.key)
    const value = meant.value ?? null
    renamed.push({ pointer: own, typed: entry.key, node: entry, info: field, meant, value })
    const scalar = entry.value?.kind === 'scalar' && value !== null ? { ...entry.value, text: value } : entry.value
    return { ...entry, key: field.key, pointer: own, value: scalar && node(scalar, field, own, renamed) }
  })
  return { ...typed, pointer, entries }
}

const mapOf = (typed: MapNode, item: FieldInfo, pointer: string, renamed: Renamed[]): MapNode => ({
  ...typed,
  pointer,
  entries: typed.entries.map((entry) => {
    const own = childPointer(pointer, entry.key)
    return { ...entry, pointer: own, value: entry.value && node(entry.value, item, own, renamed) }
  }),
})

/** The node under another pointer, with all that is in it. */
function pointed(typed: Node, pointer: string): Node {
  if (typed.pointer === pointer) return typed
  if (typed.kind === 'scalar') return { ...typed, pointer }
  if (typed.kind === 'list')
    return { ...typed, pointer, items: typed.items.map((item, i) => item && pointed(item, childPointer(pointer, i))) }
  return {
    ...typed,
    pointer,
    entries: typed.entries.map((entry) => {
      const own = childPointer(pointer, entry.key)
      return { ...entry, pointer: own, value: entry.value && pointed(entry.value, own) }
    }),
  }
}
