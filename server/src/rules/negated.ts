import type { Field } from '../records/field.ts'
import type { Proposal } from './rule.ts'

/** The same field with the minus sign that it lacks. */
export const negated = (field: Field): Proposal => ({
  field,
  text: `-${field.text.replace(/^\+\s*/, '')}`,
  why: 'minus sign lost',
  certainty: 'guess',
})
