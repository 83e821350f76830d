import type { Measure } from '../records/field.ts'
import type { Panel } from '../records/records.generated.ts'
import type { Sibling } from './about.ts'

/** A field as another record has it, with where and what that is. */
export interface Other {
  readonly path: string
  readonly field: Measure
  readonly name: string
}

/** A field of all records that have it. */
export const others = (records: readonly Sibling[], of: (panel: Panel) => Measure | undefined): readonly Other[] =>
  records.flatMap(({ path, record }) => {
    const field = of(record)
    return field ? [{ path, field, name: record.name?.text ?? path }] : []
  })
