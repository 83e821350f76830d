import type { FieldInfo } from '../records/field-info.ts'
import type { Field } from '../records/field.ts'
import { infoAt } from '../records/info-at.ts'
import type { ReadFile } from '../records/read-file.ts'
import { schemas } from '../records/schemas.generated.ts'
import type { ReferencePlace } from './library.ts'

const found = new WeakMap<ReadFile, readonly ReferencePlace[]>()

/** Every id of another record that a file names: what its schema marks as a reference, and the usual climate of a library. */
export function referencesOf(file: ReadFile): readonly ReferencePlace[] {
  const before = found.get(file)
  if (before) return before
  const places = find(file)
  found.set(file, places)
  return places
}

function find(file: ReadFile): readonly ReferencePlace[] {
  if (file.kind === 'library') {
    const { climate } = (file as ReadFile<'library'>).record.site
    return climate ? [{ file, kind: 'climate', field: climate }] : []
  }
  const root = schemas[file.kind]
  if (!root || !mentions(root)) return []
  return [...file.fields.values()].flatMap((field) => {
    const info = infoAt(root, field.pointer)
    return info?.type === 'reference' && info.record && typeof field.value === 'string'
      ? [{ file, kind: info.record, field: field as Field<string> }]
      : []
  })
}

const known = new WeakMap<FieldInfo, boolean>()

function mentions(info: FieldInfo): boolean {
  const before = known.get(info)
  if (before !== undefined) return before
  const answer =
    info.type === 'reference' || (info.item ? mentions(info.item) : false) || (info.fields ?? []).some(mentions)
  known.set(info, answer)
  return answer
}
