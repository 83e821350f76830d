import type { RecordKind } from '../records/field-info.ts'
import type { Library } from './library.ts'

/** Paths of the records that are checked by what a record holds: whoever names it, its namesakes and its family. */
export function usersOf(library: Library, path: string): string[] {
  const file = library.file(path)
  if (!file) return []
  const namesakes = library.byId<RecordKind>(file.kind, file.id, path).filter((other) => other.path !== path)
  const family = file.kind === 'panel' ? library.kinOf(file) : []
  return [...library.usesOf(file).map((use) => use.file.path), ...namesakes.map((other) => other.path), ...family]
}
