import type { Finding } from '../findings/finding.ts'
import type { Tree } from '../text/tree.ts'
import type { Field } from './field.ts'
import type { RecordKind } from './field-info.ts'
import type { Unread } from './unread.ts'
import type { RecordTypes } from './records.generated.ts'

/** One file of a library as it was typed and as it was understood. */
export interface ReadFile<K extends RecordKind = RecordKind> {
  readonly path: string
  readonly kind: K
  readonly id: string
  readonly tree: Tree
  readonly record: RecordTypes[K]
  /** Every field that could be read, by its JSON pointer. */
  readonly fields: ReadonlyMap<string, Field<unknown>>
  /** Why the text could not be had; absent where it could. */
  readonly unread?: Unread
  /** What reading found: YAML hazards, schema, quantities. The schema is held against a file only when somebody asks. */
  readFindings(): readonly Finding[]
}
