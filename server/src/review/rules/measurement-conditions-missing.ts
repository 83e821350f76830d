import { lackingOf } from '../measured/lacking.ts'
import { nameOf } from '../measured/in-words.ts'
import { reviewRule } from '../rule.ts'

export const measurementConditionsMissing = reviewRule({
  id: 'measurement-conditions-missing',
  severity: 'hint',
  reason:
    'Without the sun and the warmth of the day a value can be compared with the other strings only, and one string with nothing.',
  source: 'quantities that the translation needs: IEC 60891',
  messages: {
    sun: 'No irradiance for {array}: its currents and power are compared between strings only',
    cells: 'No temperature for {array}: its voltages and power are compared between strings only',
    both: 'Neither irradiance nor temperature for {array}: its strings are compared with each other only',
    record: 'The records of {array} lack {what}: {costs}',
  },

  check(system) {
    return system.measurements.flatMap((measurement) => {
      const { array, entry } = measurement
      const place = entry.date ?? entry.array
      const lacking = array && lackingOf(system, measurement)
      if (!lacking || !place) return []
      const about = { array: nameOf(array) }
      return [
        ...(lacking.conditions ? [{ say: says[lacking.conditions], with: about, suspects: [place] as const }] : []),
        ...lacking.records.map(({ what, costs }) => ({
          say: 'record' as const,
          with: { ...about, what, costs },
          suspects: [place] as const,
        })),
      ]
    })
  },
})

const says = { sun: 'sun', cells: 'cells', both: 'both' } as const
