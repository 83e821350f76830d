import type { System } from '../../records/records.generated.ts'
import { figure } from '../../findings/message.ts'
import { reviewRule } from '../rule.ts'

type Load = System['loads'][number]

export const loadTwice = reviewRule({
  id: 'load-twice',
  severity: 'information',
  reason:
    'A line that is copied for the next load and not edited counts in every figure of the year and of the currents.',
  source: 'the loads of the system',
  messages: {
    found:
      'Two loads are called {name}, and both count: {first} and {second} a day. Give them different names, or remove one',
  },

  check({ system: { loads } }) {
    return loads.flatMap((load, i) => {
      const first = loads.slice(0, i).find((other) => isSame(other, load))
      const [name, before] = [load.name, first?.name]
      if (!first || !name || !before) return []
      const numbers = { first: figure(energyOf(first), 'Wh'), second: figure(energyOf(load), 'Wh') }
      return [{ say: 'found' as const, with: { name, ...numbers }, suspects: [name, before] as const }]
    })
  },
})

/** One name at the same times: lights that burn longer in winter, or again in the evening, are two loads. */
const isSame = (one: Load, other: Load): boolean =>
  one.name !== undefined &&
  plainly(one.name.value) === plainly(other.name?.value ?? '') &&
  one.at?.value === other.at?.value &&
  one.days_a_week?.value === other.days_a_week?.value &&
  !one.one_of &&
  !other.one_of &&
  (one.months.length === 0 ||
    other.months.length === 0 ||
    one.months.some(({ value }) => other.months.some((month) => month.value === value)))

const plainly = (name: string) => name.trim().toLowerCase()

/** On a day of use [Wh]. */
const energyOf = ({ power, hours }: Load): number => ((power?.value ?? 0) * (hours?.value ?? 0)) / 3600
