import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import { byPath, indexIn } from './in-order.ts'

/** Paths of records by what is asked for them: their library and kind, or their id besides; each list in path order. */
export interface Index {
  put(path: string): void
  drop(path: string): void
  /** What belongs to which library has changed. */
  forget(): void
  ofKind(kind: RecordKind, root: string): readonly string[]
  byId(kind: RecordKind, id: string, root: string): readonly string[]
}

/** @param all  the paths of all records; they are listed when somebody first asks, and one by one from then on */
export function createIndex(all: () => Iterable<string>, rootOf: (path: string) => string): Index {
  let lists: Map<string, string[]> | null = null

  return {
    put(path) {
      if (!lists) return
      for (const key of keysOf(path)) {
        const list = lists.get(key)
        if (list) list.splice(indexIn(list, path), 0, path)
        else lists.set(key, [path])
      }
    },
    drop(path) {
      if (!lists) return
      for (const key of keysOf(path)) {
        const list = lists.get(key)
        list?.splice(indexIn(list, path), 1)
      }
    },
    forget: () => (lists = null),
    ofKind: (kind, root) => listOf(keyOf(kind, root)),
    byId: (kind, id, root) => listOf(keyOf(kind, root, id)),
  }

  function listOf(key: string): readonly string[] {
    lists ??= gathered()
    return lists.get(key) ?? []
  }

  function gathered(): Map<string, string[]> {
    const gathered = new Map<string, string[]>()
    for (const path of [...all()].sort(byPath))
      for (const key of keysOf(path)) {
        const list = gathered.get(key)
        if (list) list.push(path)
        else gathered.set(key, [path])
      }
    return gathered
  }

  function keysOf(path: string): readonly string[] {
    const record = recordOfPath(path)
    const root = rootOf(path)
    return record ? [keyOf(record.kind, root), keyOf(record.kind, root, record.id)] : []
  }
}

const keyOf = (kind: RecordKind, root: string, id = '') => `${kind}\n${id}\n${root}`
