import { entriesOf } from '../tree-queries.ts'
import type { Entry, MapNode, Tree } from '../tree.ts'
import { beginsAsNumber } from './hazard.ts'

/** A key without a colon, and so without a value: always the trace of a slip. */
export interface Stray {
  readonly entry: Entry
  readonly map: MapNode
  readonly kind: 'wrapped' | 'no-space' | 'no-colon' | 'decimal' | 'text' | 'bare'
  /** The entry with a value that the stray was cut from: for `decimal` and `text`. */
  readonly head: Entry | null
}

export function strays(tree: Tree): Stray[] {
  const places = entriesOf(tree)
  if (places.every(({ entry }) => entry.colon !== null)) return []
  const heads = new Map<MapNode, Entry>()
  const wrapped = new Map<MapNode, boolean>()
  return places.flatMap(({ entry, map }) => {
    if (entry.colon !== null) {
      heads.set(map, entry)
      return []
    }
    if (!wrapped.has(map)) wrapped.set(map, isWrapped(map))
    const head = heads.get(map) ?? null
    const kind = wrapped.get(map) ? 'wrapped' : kindOf(entry.key, map, head)
    return [{ entry, map, kind, head: kind === 'decimal' || kind === 'text' ? head : null }]
  })
}

export const withoutSpace = /^([A-Za-z_][\w-]*):+([^\s/:].*)$/
/** On many keyboards ; or . is on the key of the colon, or beside it. */
export const withoutColon = /^([A-Za-z_](?:[\w-]*\w)?)(\s*=\s*|[;.,-]\s+|\s+)(\S.*)$/

function kindOf(key: string, map: MapNode, head: Entry | null): Stray['kind'] {
  if (withoutSpace.test(key)) return 'no-space'
  const [, , joint = '', value] = withoutColon.exec(key) ?? []
  if (value && (beginsAsNumber(value) || (!map.flow && (/[=;]/.test(joint) || !/\s/.test(value))))) return 'no-colon'
  if (!map.flow || head?.value?.kind !== 'scalar' || head.value.style !== 'plain') return 'bare'
  return /\d$/.test(head.value.text) && /^\d/.test(key) ? 'decimal' : 'text'
}

function isWrapped({ flow, entries }: MapNode): boolean {
  return flow && beginsAsNumber(entries[0]!.key) && entries.every((entry) => entry.colon === null)
}
