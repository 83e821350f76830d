import type { Field } from '../records/field.ts'
import { ruleOver } from '../findings/rule.ts'
import type { Figures } from './figures.ts'
import type { ResolvedArray, ResolvedSystem, Used } from './resolved.ts'

/** A rule over a whole system, of the same shape as those over one record. */
export const reviewRule = ruleOver<ResolvedSystem, Figures>()

/** Fields of another record that a finding speaks of; those of a record written in place are in this file anyway. */
export function elsewhere(used: Used<unknown> | undefined, ...fields: readonly (Field<unknown> | undefined)[]) {
  const { path } = used ?? { path: null }
  if (path === null) return {}
  return { elsewhere: fields.flatMap((field) => (field ? [{ path, field }] : [])) }
}

/** Where an array is spoken of as a whole: its wiring, else whatever it names. */
export function placeOf({ entry }: ResolvedArray): Field<unknown> | undefined {
  const { panels, controller, wiring, id } = entry
  return wiring.in_series ?? controller.id ?? panels[0]?.panel.id ?? panels[0]?.count ?? id
}
