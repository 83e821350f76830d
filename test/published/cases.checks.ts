import { coldVoltageFactor } from '../../server/src/physics/cold-voltage.ts'
import { bankOf } from '../../server/src/review/bank.ts'
import { mismatchOf } from '../../server/src/review/mismatch.ts'
import type { ResolvedSystem } from '../../server/src/review/resolved.ts'
import { shortfallOf, yearOf } from '../../server/src/review/year.ts'
import { high, north, strong, system, weak } from '../review/cases.ts'
import { about, printed, type Check } from './check.ts'

const year = (one: ResolvedSystem) => yearOf(one)!.months.reduce((sum, { yield_wh_day: wh }) => sum + wh, 0)
const lacking = (one: ResolvedSystem) => {
  const { unserved, load } = shortfallOf(yearOf(one)!)!
  return (100 * unserved) / load
}
const beside = system({ panels: [strong, high] })
const frost = system({
  climate: north,
  panels: [strong, strong, strong, strong],
  lithium: 300,
  battery: 'place: outside',
  loads: '[{ name: all, power: 8 W, hours: 24 }]',
})
const at = (time: string) =>
  system({ panels: [strong, strong], lithium: 60, loads: `[{ name: all, power: 60 W, hours: 6, at: ${time} }]` })

/** Cases of whole systems; each calculation stands beside its test in test/review. */
export const caseChecks: readonly Check[] = [
  about(
    'four panels 2S2P, alternately over sorted',
    'two single-diode curves at STC (own arithmetic): 257.6 W over 320.0 W',
    year(system({ panels: [strong, weak, strong, weak], series: 2 })) /
      year(system({ panels: [strong, strong, weak, weak], series: 2 })),
    0.805,
    0.03,
  ),
  about(
    '18 V beside 36 V in parallel, share lost, %',
    'two single-diode curves at STC (own arithmetic): 159.0 W of 210 W',
    100 * mismatchOf(beside, beside.arrays[0]!, bankOf(beside))!.loss,
    24.3,
    3,
  ),
  about(
    '62° north, not charged in the frost, unserved, %',
    'days of frost less what the battery and the daylight carry (own arithmetic, test/review/frost.test.ts)',
    lacking(frost),
    21.3,
    2,
  ),
  about(
    'unserved in the evening over by day',
    'all of an evening load comes from the battery (own estimate, test/review/time-of-day.test.ts)',
    lacking(at('evening')) / lacking(at('day')),
    2,
    0.4,
  ),
  printed(
    'factor on Voc at -50 °C, where the table has ended',
    'US National Electrical Code, table 690.7(A), gone on by its last slope of 0.385 %/K (own arithmetic)',
    coldVoltageFactor(-50),
    '1.2885',
  ),
]
