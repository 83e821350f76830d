import type { Param } from '../../findings/message.ts'
import type { Proposal } from '../../findings/rule.ts'
import type { Field } from '../../records/field.ts'
import { reviewRule } from '../rule.ts'

export const wiringCountMismatch = reviewRule({
  id: 'wiring-count-mismatch',
  severity: 'error',
  reason: 'Panels in series times strings in parallel is the number of panels.',
  source: 'arithmetic',
  messages: {
    product: '{series} x {parallel} = {count}',
    mismatch: '{series} in series x {parallel} in parallel are {product} panels, and {count} are listed',
  },

  check({ arrays }) {
    return arrays.flatMap(({ entry, panels }) => {
      const { in_series: series, in_parallel: parallel } = entry.wiring
      if (!series || !parallel || panels.some((p) => !p.entry.count || p.entry.count.value < 1)) return []
      const count = panels.reduce((sum, p) => sum + (p.entry.count?.value ?? 0), 0)
      if (count === 0 || series.value * parallel.value === count) return []
      const [strings, length] = [count / series.value, count / parallel.value]
      const fix = (field: Field<number>, text: number, [series, parallel]: readonly Param[]): Proposal => ({
        field,
        text: String(text),
        why: { say: 'product', with: { series, parallel, count } },
        certainty: 'guess',
      })
      const correction = Number.isInteger(strings)
        ? fix(parallel, strings, [series, strings])
        : Number.isInteger(length)
          ? fix(series, length, [length, parallel])
          : undefined
      return [
        {
          say: 'mismatch',
          with: { series, parallel, product: series.value * parallel.value, count },
          suspects: [parallel, series],
          ...(correction && { correction }),
        },
      ]
    })
  },
})
