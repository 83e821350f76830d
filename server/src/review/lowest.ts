import type { Measure } from '../records/field.ts'

/** The smallest of some fields; those that are missing do not count. */
export const lowest = (fields: readonly (Measure | undefined)[]): Measure | undefined =>
  fields.reduce((low, field) => (field && (!low || field.value < low.value) ? field : low), undefined)
