import type { Field } from '../../records/field.ts'
import type { ReviewRule } from '../rule.ts'

export const wiringCountMismatch: ReviewRule = {
  id: 'wiring-count-mismatch',
  severity: 'error',
  reason: 'Panels in series times strings in parallel is the number of panels.',
  source: 'arithmetic',

  check({ arrays }) {
    return arrays.flatMap(({ entry, panels }) => {
      const { in_series: series, in_parallel: parallel } = entry.wiring
      if (!series || !parallel || panels.some((p) => !p.entry.count || p.entry.count.value < 1)) return []
      const count = panels.reduce((sum, p) => sum + (p.entry.count?.value ?? 0), 0)
      if (series.value * parallel.value === count) return []
      const [strings, length] = [count / series.value, count / parallel.value]
      const fix = (field: Field<number>, text: number, why: string) => ({
        field,
        text: String(text),
        why,
        certainty: 'guess' as const,
      })
      const correction = Number.isInteger(strings)
        ? fix(parallel, strings, `${series.text} x ${strings} = ${count}`)
        : Number.isInteger(length)
          ? fix(series, length, `${length} x ${parallel.text} = ${count}`)
          : undefined
      return [
        {
          message: `${series.text} in series x ${parallel.text} in parallel are ${series.value * parallel.value} panels, and ${count} are listed`,
          suspects: [parallel, series] as const,
          ...(correction && { correction }),
        },
      ]
    })
  },
}
