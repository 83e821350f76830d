import { bankOf } from '../bank.ts'
import { darkHours } from '../dark-hours.ts'
import { monthsInWords } from '../months-in-words.ts'
import { rough, roughPercent } from '../rough.ts'
import type { ReviewRule } from '../rule.ts'
import { shortfallOf, yearOf } from '../year.ts'

/** Shares of the load that are not met: worth a warning, and worth a word (common practice, no source). */
const [warned, said] = [0.01, 0.002]

export const batteryRunsEmpty: ReviewRule = {
  id: 'battery-runs-empty',
  severity: 'warning',
  reason: 'At its floor the battery is cut off and the loads stand still; often there, it also ages fast.',
  source: 'hour-by-hour years around the monthly means, after Aguiar, Collares-Pereira and Conde (1988)',

  check(system, { months, year: { unserved_p90_wh: bad } }) {
    const bank = bankOf(system)
    const year = yearOf(system)
    const short = year && shortfallOf(year)
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || !short || !year.hours || !place) return null
    const share = short.load > 0 ? short.unserved / short.load : 0
    if (said <= share) {
      const { days, nights } = darkHours(year.hours)
      const names = monthsInWords(
        months.filter((m) => (m.unserved_wh_day ?? 0) > 1e-3 * m.load_wh_day).map(({ month }) => month),
      )
      const worse = bad === null ? '' : `; in one year of ten it is ${roughPercent(bad / short.load)}`
      return {
        message: `In a usual year ${count(nights, 'night')} and ${count(days, 'day')} go dark, in ${names}: ${roughPercent(share)} of the loads are not met${worse}`,
        suspects: [place],
        severity: share < warned ? 'information' : 'warning',
      }
    }
    const limit = bank.lithium ? 0.3 : 0.5
    const low = months.reduce((a, m) => Math.min(a, m.lowest_soc ?? 1), 1)
    if (limit <= low) return null
    return {
      message: `In a usual year the battery falls to ${roughPercent(low)}, below the ${100 * limit} % that ${bank.lithium ? 'lithium' : 'lead-acid'} should keep`,
      suspects: [place],
      severity: 'information',
    }
  },
}

const count = (number: number, what: string) => `${rough(number)} ${what}${number === 1 ? '' : 's'}`
