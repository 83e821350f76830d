import type { FieldInfo, RecordKind } from '../records/field-info.ts'
import { schemas } from '../records/schemas.generated.ts'

/** What one record types, by pointer. */
interface Typed {
  readonly kind: RecordKind
  readonly cells: ReadonlyMap<string, string>
}

/**
 * Every field of the kinds of record that there are, in the order of the schemas, and behind them what records type besides.
 *
 * @returns  JSON pointers: all of them, and of them those that any record fills
 */
export function typedPointers(records: readonly Typed[]) {
  const typed = new Set(records.flatMap(({ cells }) => [...cells.keys()]))
  const known = [...new Set(records.map(({ kind }) => kind))].flatMap((kind) => pointersOf(schemas[kind]!, ''))
  const all = [...new Set([...known, ...typed])]
  return { all, filled: all.filter((pointer) => typed.has(pointer)) }
}

/** Of all fields of a group, depth first; a list is one. */
function pointersOf({ fields = [] }: FieldInfo, parent: string): readonly string[] {
  return fields.flatMap((field) => [`${parent}/${field.key}`, ...pointersOf(field, `${parent}/${field.key}`)])
}
