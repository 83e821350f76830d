import type { Field } from '../records/field.ts'
import type { Panel } from '../records/records.generated.ts'
import { panelRule } from './about.ts'

/** A rule that says which derived value an absent field costs. One that is there and cannot be read has a finding of its own. */
export const missingField = (rule: {
  readonly id: string
  readonly reason: string
  /** JSON pointer */
  readonly field: string
  readonly message: string
  /** Where it is shown; undefined where the field is not missed. */
  readonly shownAt: (panel: Panel) => Field<unknown> | undefined
}) => ({
  /** What is missing. */
  field: rule.field,
  ...panelRule({
    id: rule.id,
    severity: 'hint',
    reason: rule.reason,
    source: 'the derived values of a panel record',
    messages: { missing: rule.message },

    check(panel, { typed }) {
      const place = rule.shownAt(panel)
      return place && !typed(rule.field) ? { say: 'missing', suspects: [place] } : null
    },
  }),
})
