import type { FieldInfo } from './field-info.ts'
import { named, type Phrase } from '../wording/phrase.ts'
import { onceEach } from './once-each.ts'
import { schemas } from './schemas.generated.ts'

/** The fields of a group by their keys; none for what is no group. */
export const fieldsByKey = onceEach(
  (info: FieldInfo): ReadonlyMap<string, FieldInfo> => new Map((info.fields ?? []).map((field) => [field.key, field])),
)

/** The description of the field at a JSON pointer, through groups, lists, maps and records in place of an id. */
export function infoAt(root: FieldInfo, pointer: string): FieldInfo | null {
  let info: FieldInfo | undefined = root
  for (const step of pointer.split('/').slice(1)) {
    const key = step.replaceAll('~1', '/').replaceAll('~0', '~')
    if (info?.type === 'list' || info?.type === 'map') info = info.item
    else {
      const group: FieldInfo | undefined = info?.type === 'reference' && info.record ? schemas[info.record] : info
      info = group && fieldsByKey(group).get(key)
    }
    if (!info) return null
  }
  return info ?? null
}

/** What messages call a field: the datasheet's word where there is one. */
export const nameOf = (info: FieldInfo): string => info.symbol ?? (info.title || info.key)

/** The same, for a sentence: another language has its own word for it. */
export const fieldName = (info: FieldInfo): Phrase => named(nameOf(info))
