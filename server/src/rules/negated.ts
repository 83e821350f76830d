import type { Proposal } from '../findings/rule.ts'
import type { Field } from '../records/field.ts'
import { word } from './words.ts'

/** The same field with the minus sign that it lacks. */
export const negated = (field: Field): Proposal => ({
  field,
  text: `-${field.text.replace(/^\+\s*/, '')}`,
  why: word({ say: 'minusLost' }),
  certainty: 'guess',
})
