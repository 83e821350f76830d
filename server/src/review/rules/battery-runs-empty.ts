import type { Said } from '../../findings/message.ts'
import { bankOf } from '../bank.ts'
import { darkHours, type Dark } from '../dark-hours.ts'
import { monthsInWords } from '../months-in-words.ts'
import { rough, roughPercent } from '../rough.ts'
import type { ResolvedSystem } from '../resolved.ts'
import { reviewRule } from '../rule.ts'
import { monthName } from '../../findings/months.ts'
import { shortfallOf, yearOf } from '../year.ts'

/** Shares of the load that are not met: worth a warning, and worth a word (common practice, no source). */
const [warned, said] = [0.01, 0.002]

export const batteryRunsEmpty = reviewRule({
  id: 'battery-runs-empty',
  severity: 'warning',
  reason: 'At its floor the battery is cut off and the loads stop; often there, it also ages fast.',
  source: 'hour-by-hour years around the monthly means, after Aguiar, Collares-Pereira and Conde (1988)',
  messages: {
    inOneYear: ', {value} in one year of ten',
    oneMore: '; add one in parallel',
    more: '; add {more} in parallel',
    both: '{nights} and {days}',
    night: '{number} night',
    nights: '{number} nights',
    day: '{number} day',
    days: '{number} days',
    mostIn: 'mostly in {month}',
    only: 'in {months}',
    inAUsual: 'On {dark} of a usual year the battery is empty, {when}: {share} of the loads are not met{worst}{then}',
    lithium: 'lithium',
    leadAcid: 'lead-acid',
    inAUsual2: 'In a usual year the battery falls to {low}, below the {value} % that {part} should keep',
  },

  check(system, { months, year: { unserved_p90_wh: bad } }) {
    const bank = bankOf(system)
    const year = yearOf(system)
    const short = year && shortfallOf(year)
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || !short || !year.hours || !place) return null
    const share = short.load > 0 ? short.unserved / short.load : 0
    if (said <= share) {
      const dark = months.filter((m) => (m.unserved_wh_day ?? 0) > 1e-3 * m.load_wh_day)
      const most = dark.reduce((a, m) => (a.unserved_wh_day! < m.unserved_wh_day! ? m : a), dark[0]!)
      const when =
        dark.length > 2
          ? { say: 'mostIn', with: { month: monthName(most.month) } }
          : { say: 'only', with: { months: monthsInWords(dark.map(({ month }) => month)) } }
      const [usual, worst] = [roughPercent(share), bad === null ? null : roughPercent(bad / short.load)]
      const more = moreInParallel(system, said)
      return {
        say: 'inAUsual',
        with: {
          dark: darkInWords(darkHours(year.hours)),
          when,
          share: usual,
          worst: worst === null || worst === usual ? null : { say: 'inOneYear', with: { value: worst } },
          then: more === null ? null : { say: more === 1 ? 'oneMore' : 'more', with: { more } },
        },
        suspects: [place],
        severity: share < warned ? 'information' : 'warning',
      }
    }
    const limit = bank.lithium ? 0.3 : 0.5
    const low = months.reduce((a, m) => Math.min(a, m.lowest_soc ?? 1), 1)
    if (limit <= low) return null
    return {
      say: 'inAUsual2',
      with: {
        low: roughPercent(low),
        value: 100 * limit,
        part: bank.lithium ? { say: 'lithium' } : { say: 'leadAcid' },
      },
      suspects: [place],
      severity: 'information',
    }
  },
})

/** How many more batteries in parallel would leave no more than this share of the loads unmet; null where three would not. */
function moreInParallel(system: ResolvedSystem, share: number): number | null {
  const { battery } = system.system
  const now = battery.in_parallel
  if (!now || now.value < 1) return null
  for (let more = 1; more <= 3; more++) {
    const inParallel = { ...now, value: now.value + more }
    const year = yearOf({ ...system, system: { ...system.system, battery: { ...battery, in_parallel: inParallel } } })
    const short = year && shortfallOf(year)
    if (short && short.unserved < share * short.load) return more
  }
  return null
}

/** Leaves out what there is none of: an evening load leaves no day dark. */
function darkInWords({ days, nights }: Dark): Said {
  const said = {
    nights: { say: nights === 1 ? 'night' : 'nights', with: { number: rough(nights) } },
    days: { say: days === 1 ? 'day' : 'days', with: { number: rough(days) } },
  }
  if (nights === 0) return said.days
  return days === 0 ? said.nights : { say: 'both', with: said }
}
