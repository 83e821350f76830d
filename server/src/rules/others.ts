import type { Kindred, Noted, Sibling } from './about.ts'

/** A field as another record has it, with where and what that is. */
export interface Other {
  readonly path: string
  readonly field: Noted
  readonly name: string
}

/** A field of all records that have it. */
export const others = (records: readonly Sibling[], of: (panel: Kindred) => Noted | undefined): readonly Other[] =>
  records.flatMap(({ path, record }) => {
    const field = of(record)
    return field ? [{ path, field, name: record.name?.text ?? path }] : []
  })
