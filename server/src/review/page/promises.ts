import { joinWords } from '../../findings/join-words.ts'
import { inWords } from '../../findings/words.ts'
import type { Catalogue } from '../../findings/message.ts'
import { monthNames } from '../../findings/months.ts'
import { bankOf } from '../bank.ts'
import type { Figures, MonthFigures } from '../figures.ts'
import { monthsInWords } from '../months-in-words.ts'
import { rough, roughPercent } from '../rough.ts'
import type { ResolvedSystem } from '../resolved.ts'

type Load = ResolvedSystem['system']['loads'][number]

/** What a system does for whoever lives with it, in sentences for someone who knows nothing of solar. */
export function promisesOf(system: ResolvedSystem, figures: Figures): readonly string[] {
  const { months, year, battery } = figures
  if (months.length === 0 || year.unserved_wh === null)
    return [
      'What it runs from month to month is not known: the sun of the place, the battery or a value of the panels is missing.',
    ]
  const short = months.filter(isShort)
  const runs = runsIn(system, new Set(short.map(({ month }) => month)))
  const days = battery.autonomy_days
  return [
    ...(runs === '' ? [] : [`It runs: ${runs}.`]),
    ...bring(system, short),
    ...(days === null ? [] : [`With no sun at all, a full battery lasts ${rough(days)} days.`]),
    ...badYear(figures),
    ...others(system),
  ]
}

/** Less than a hundredth is not worth a word (common practice, no source). */
const isShort = ({ unserved_wh_day: unmet, load_wh_day: load }: MonthFigures) =>
  unmet !== null && unmet >= 1 && unmet >= 0.01 * load

/** Loads that share their months come together: `the fridge and lights (May to September)`. */
function runsIn({ system }: ResolvedSystem, short: ReadonlySet<number>): string {
  const groups = new Map<string, string[]>()
  for (const load of system.loads) {
    const months = monthsOf(load).filter((month) => !short.has(month))
    if (months.length === 0) continue
    const when = inMonths(months)
    groups.set(when, [...(groups.get(when) ?? []), load.name?.text ?? 'a load'])
  }
  return [...groups].map(([when, names]) => `${joinWords(names)} (${when})`).join('; ')
}

const monthsOf = ({ months }: Load) =>
  months.length > 0 ? months.map(({ value }) => value) : monthNames.map((_, m) => m + 1)

/** What must come from elsewhere, in ampere-hours at the battery, as a monitor of batteries counts them. */
function bring(system: ResolvedSystem, short: readonly MonthFigures[]): readonly string[] {
  const voltage = bankOf(system)?.voltage
  if (short.length === 0 || voltage === undefined) return []
  const needs = short.map(
    ({ month, unserved_wh_day: unmet }) => `in ${monthNames[month - 1]} ${Math.ceil(unmet! / voltage)} Ah a day`,
  )
  return [
    `Sun and battery are not enough all year: bring ${joinWords(needs)} from ${elsewhere[system.system.kind?.value ?? 'cabin']}, or use less.`,
  ]
}

const elsewhere = {
  boat: 'the engine or a shore connection',
  vehicle: 'the engine or a mains connection',
  cabin: 'a generator',
} as const

function badYear({ months, year }: Figures): readonly string[] {
  const load = months.reduce((sum, { load_wh_day: wh }) => sum + (365 / 12) * wh, 0)
  const share = (year.unserved_p90_wh ?? 0) / load
  return share > 0.005 ? [`In one year of ten, ${roughPercent(share)} or more of what the loads take goes unmet.`] : []
}

function others({ system }: ResolvedSystem): readonly string[] {
  const names = system.other_sources.flatMap(({ name }) => name?.text ?? [])
  return names.length > 0 ? [`This counts on ${joinWords(names)} running as described.`] : []
}

const phrases = { id: 'promises', messages: { months: '{months}' } } as const satisfies Catalogue

const inMonths = (months: readonly number[]) =>
  inWords({ say: 'months', with: { months: monthsInWords([...months].sort((a, b) => a - b)) } }, phrases)
