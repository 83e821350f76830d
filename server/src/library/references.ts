import type { FieldInfo } from '../records/field-info.ts'
import type { Field } from '../records/field.ts'
import { infoAt } from '../records/info-at.ts'
import { onceEach } from '../records/once-each.ts'
import type { ReadFile } from '../records/read-file.ts'
import { schemas } from '../records/schemas.generated.ts'
import type { ReferencePlace } from './library.ts'

/** Every id of another record that a file names: what its schema marks as a reference, and the usual climate of a library. */
export const referencesOf = onceEach((file: ReadFile): readonly ReferencePlace[] => {
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
})

const mentions = onceEach(
  (info: FieldInfo): boolean =>
    info.type === 'reference' || (info.item ? mentions(info.item) : false) || (info.fields ?? []).some(mentions),
)
