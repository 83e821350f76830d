import type { Shape } from '../text/shape.ts'
import type { Node, Tree } from '../text/tree.ts'
import type { FieldInfo, RecordKind } from './field-info.ts'
import { fieldsByKey } from './info-at.ts'
import { onceEach } from './once-each.ts'
import { schemas } from './schemas.generated.ts'

/** What a reader of broken lines may know of a kind of record. */
export function shapeOf(kind: RecordKind): Shape | undefined {
  const info = schemas[kind]
  return info && shapeOfGroup(info)
}

const prose: ReadonlySet<string> = new Set(['notes'])
const texts: ReadonlySet<string> = new Set(['source', 'because'])

const shapeOfGroup = onceEach((info: FieldInfo): Shape => ({
  names: new Set(namesIn(info)),
  prose,
  texts,
  misfits: ({ root }: Tree) => (root ? misfitsIn(root, info, true) : 1),
}))

function namesIn(info: FieldInfo, into: string[] = []): readonly string[] {
  for (const field of info.fields ?? []) {
    into.push(field.key)
    namesIn(field, into)
  }
  if (info.item) namesIn(info.item, into)
  return into
}

/** Fields that are unknown where they are, missing, twice there, or of another shape. */
function misfitsIn(node: Node, info: FieldInfo, isRecord = false): number {
  const group = (info.type === 'reference' && info.record && schemas[info.record]) || info
  if (node.kind === 'list')
    return info.type === 'list' ? sum(node.items, (item) => (item ? misfitsIn(item, info.item!) : 1)) : 1 + sizeOf(node)
  if (node.kind === 'scalar') return ['group', 'list', 'map'].includes(info.type) ? 1 : 0
  if (info.type === 'map')
    return sum(node.entries, ({ value }) => (value && info.item ? misfitsIn(value, info.item) : 1))
  if (!group.fields) return sizeOf(node)
  const known = fieldsByKey(group)
  const present = new Set(node.entries.map(({ key }) => key))
  const isMissing = ({ key, required }: FieldInfo) =>
    required && !present.has(key) && (isRecord || info.type !== 'reference')
  const misfits = sum(node.entries, ({ key, value }) => {
    const field = known.get(key)
    return field && value ? misfitsIn(value, field) : 1
  })
  return misfits + node.entries.length - present.size + group.fields.filter(isMissing).length
}

/** How many fields a part has, which are all out of place where it is not what belongs there. */
function sizeOf(node: Node): number {
  if (node.kind === 'scalar') return 0
  if (node.kind === 'list') return sum(node.items, (item) => (item ? sizeOf(item) : 0))
  return sum(node.entries, ({ value }) => 1 + (value ? sizeOf(value) : 0))
}

const sum = <T>(all: readonly T[], count: (one: T) => number) => all.reduce((total, one) => total + count(one), 0)
