import { figure, percent } from '../../findings/message.ts'
import { nameOf } from '../measured/in-words.ts'
import { measuredOf } from '../measured/measured.ts'
import type { PowerLeft } from '../measured/power-left.ts'
import { reviewRule } from '../rule.ts'

export const powerBelowWarranty = reviewRule({
  id: 'power-below-warranty',
  severity: 'warning',
  reason:
    'A maker answers for panels that lose more than the output warranty allows, if the claim comes in time and with figures.',
  source:
    'steps of the warranty in the panel record; power by Vmp and Imp against the conditions of the day: IEC 60891:2021, procedure 2',
  messages: {
    found:
      'After {years} years {array} gives {left} of its power (±{uncertainty}); the warranty promises {warranted}{cause}',
    aged: ': the panels have aged',
  },

  check(system) {
    const { strings, trends } = measuredOf(system)
    return trends.flatMap(({ points }) =>
      points.filter(isBelow).flatMap((point) => {
        const fields = point.strings.flatMap(({ string }) => string.readings.get('imp')?.field ?? [])
        const [first, ...others] = fields
        if (!first) return []
        const aged = strings.some(
          ({ string, diagnosis }) => diagnosis?.cause === 'aged' && point.strings.some((one) => one.string === string),
        )
        return [
          {
            say: 'found' as const,
            with: {
              years: figure(point.years, undefined, 2),
              array: nameOf(point.array),
              left: percent(Number(point.left.toPrecision(2))),
              uncertainty: percent(Number(point.uncertainty.toPrecision(1))),
              warranted: percent(point.warranted!),
              cause: aged ? { say: 'aged' } : null,
            },
            suspects: [first, ...others] as const,
          },
        ]
      }),
    )
  },
})

const isBelow = ({ left, uncertainty, warranted, from }: PowerLeft): boolean =>
  from === 'power' && warranted !== null && left + uncertainty < warranted
