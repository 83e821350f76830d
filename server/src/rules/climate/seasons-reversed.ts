import type { Climate } from '../../records/records.generated.ts'
import { byMonth } from '../../values/months.ts'
import type { Rule } from '../rule.ts'

export const seasonsReversed: Rule<Climate> = {
  id: 'seasons-reversed',
  severity: 'warning',
  reason: 'The sun is strong in summer, and summer is in June north of the equator and in December south of it.',
  source: 'geometry of the sun',

  check({ latitude, sun }) {
    if (!latitude || Math.abs(latitude.value) < 20) return null
    const months = byMonth(sun)
    const [june, december] = [months.get(6), months.get(12)]
    if (!june || !december || june.value === december.value) return null
    const north = june.value > december.value
    if (north === latitude.value > 0) return null
    return {
      message: `The sun of June, ${june.text}, is ${north ? 'above' : 'below'} that of December, ${december.text}, which belongs to the ${north ? 'northern' : 'southern'} hemisphere, and the latitude ${latitude.text} does not`,
      suspects: [latitude, june, december],
    }
  },
}
