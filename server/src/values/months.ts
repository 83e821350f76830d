import type { Field } from '../records/field.ts'

/** The values of a list of twelve by month, 1 to 12; one that could not be read leaves its month out. */
export const byMonth = <T extends Field>(list: readonly T[]): ReadonlyMap<number, T> =>
  new Map(
    list
      .map((field) => [Number(field.pointer.slice(field.pointer.lastIndexOf('/') + 1)) + 1, field] as const)
      .filter(([month]) => month <= 12),
  )
