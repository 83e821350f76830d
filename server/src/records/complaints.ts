import { childPointer } from '../text/pointer.ts'
import type { MapNode, Node, ScalarNode } from '../text/tree.ts'
import type { FieldInfo } from './field-info.ts'
import { scalarValue } from './plain.ts'
import { schemas } from './schemas.generated.ts'

/** What a value fails to meet, by the keyword of JSON Schema that demands it. */
export interface Complaint {
  readonly pointer: string
  readonly keyword: Demand | 'required' | 'additionalProperties' | 'minItems' | 'maxItems'
  /** required, additionalProperties: the key that the group lacks or does not know */
  readonly key?: string
}

type Demand = 'type' | 'enum' | 'const' | 'minimum' | 'maximum' | 'pattern'

/**
 * Checks a tree against the JSON Schema of its kind, as any validator would; the text of a quantity is left to the
 * quantity reader. Empty values and swallowed keys count as not there: they have findings of their own.
 */
export function complaintsOf(root: FieldInfo, node: Node | null, swallowed: ReadonlySet<string>): readonly Complaint[] {
  const found: Complaint[] = []
  look(root, node, '')
  return found

  function look(info: FieldInfo, node: Node | null, pointer: string): void {
    if (node?.kind === 'map' && info.type === 'group') group(info.fields!, node)
    else if (node?.kind === 'map' && info.type === 'reference') group(inlineFields(info), node)
    else if (node?.kind === 'map' && info.type === 'map')
      for (const entry of there(node).values()) look(info.item!, entry.value, entry.pointer)
    else if (node?.kind === 'list' && info.type === 'list') {
      if (node.items.length < (info.minItems ?? 0)) found.push({ pointer, keyword: 'minItems' })
      if ((info.maxItems ?? Infinity) < node.items.length) found.push({ pointer, keyword: 'maxItems' })
      node.items.forEach((item, i) => look(info.item!, item, childPointer(pointer, i)))
    } else
      for (const keyword of node?.kind === 'scalar' ? unmet(info, node) : wrongType) found.push({ pointer, keyword })
  }

  function group(fields: readonly FieldInfo[], node: MapNode): void {
    const entries = there(node)
    for (const info of fields) {
      const entry = entries.get(info.key)
      if (entry) look(info, entry.value, entry.pointer)
      else if (info.required) found.push({ pointer: node.pointer, keyword: 'required', key: info.key })
      entries.delete(info.key)
    }
    for (const key of entries.keys()) found.push({ pointer: node.pointer, keyword: 'additionalProperties', key })
  }

  function there({ entries }: MapNode) {
    return new Map(entries.filter((e) => e.value !== null && !swallowed.has(e.pointer)).map((e) => [e.key, e]))
  }
}

/** A record in place of an id is part of another file and needs neither a format nor a name. */
const inlineFields = ({ record }: FieldInfo): readonly FieldInfo[] =>
  (schemas[record!]?.fields ?? []).map(({ required, ...info }) =>
    required && info.key !== 'format' && info.key !== 'name' ? { ...info, required } : info,
  )

const wrongType = ['type'] as const

/** Of a text only the pattern: a name may look like a number. */
function unmet(info: FieldInfo, node: ScalarNode): readonly Demand[] {
  const value = scalarValue(node)
  if (info.const !== undefined) return value === info.const ? [] : ['const']
  switch (info.type) {
    case 'text':
      return pattern(info, node.text)
    case 'date':
      return typeof value === 'string' ? pattern(info, value) : wrongType
    case 'choice':
      return info.choices!.some((choice) => choice.value === node.text) ? [] : ['enum']
    case 'integer':
    case 'number':
      return typeof value === 'number' ? [...limits(info, value)] : wrongType
    case 'quantity':
      return typeof value === 'boolean' ? wrongType : []
    default:
      return typeof value === (info.type === 'reference' ? 'string' : info.type) ? [] : wrongType
  }
}

const pattern = ({ pattern }: FieldInfo, text: string): readonly Demand[] =>
  pattern === undefined || new RegExp(pattern).test(text) ? [] : ['pattern']

function* limits(info: FieldInfo, value: number): Generator<Demand> {
  if (info.type === 'integer' && !Number.isInteger(value)) yield 'type'
  if (value < (info.minimum ?? -Infinity)) yield 'minimum'
  if ((info.maximum ?? Infinity) < value) yield 'maximum'
}
