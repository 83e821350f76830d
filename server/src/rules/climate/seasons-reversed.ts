import { byMonth } from '../../values/months.ts'
import { climateRule } from '../over.ts'

export const seasonsReversed = climateRule({
  id: 'seasons-reversed',
  severity: 'warning',
  reason: 'The sun is strong in summer, and summer is in June north of the equator and in December south of it.',
  source: 'geometry of the sun',
  messages: {
    above: 'above',
    below: 'below',
    northern: 'northern',
    southern: 'southern',
    found:
      'The sun of June, {june}, is {part} that of December, {december}, which belongs to the {part2} hemisphere, and the latitude {latitude} does not',
  },

  check({ latitude, sun }) {
    if (!latitude || Math.abs(latitude.value) < 20) return null
    const months = byMonth(sun)
    const [june, december] = [months.get(6), months.get(12)]
    if (!june || !december || june.value === december.value) return null
    const north = june.value > december.value
    if (north === latitude.value > 0) return null
    return {
      say: 'found',
      with: {
        june,
        part: north ? { say: 'above' } : { say: 'below' },
        december,
        part2: north ? { say: 'northern' } : { say: 'southern' },
        latitude,
      },
      suspects: [latitude, june, december],
    }
  },
})
