import { joinWords } from '../../findings/join-words.ts'
import { inWords } from '../../findings/words.ts'
import type { Catalogue } from '../../findings/message.ts'
import { monthNames } from '../../findings/months.ts'
import { bankOf } from '../bank.ts'
import type { Figures, MonthFigures } from '../figures.ts'
import { monthsInWords } from '../months-in-words.ts'
import { rough, roughPercent } from '../rough.ts'
import type { ResolvedSystem } from '../resolved.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { named, phrase, sayIn } from '../../wording/phrase.ts'

type Load = ResolvedSystem['system']['loads'][number]

/** What a system does for whoever lives with it, in sentences for someone who knows nothing of solar. */
export function promisesOf(system: ResolvedSystem, figures: Figures, bundle?: Bundle): readonly string[] {
  const say = sayIn(bundle)
  const { months, year, battery } = figures
  if (months.length === 0 || year.unserved_wh === null)
    return [
      say`What it runs from month to month is not known: the sun of the place, the battery or a value of the panels is missing.`,
    ]
  const short = months.filter(isShort)
  const runs = runsIn(system, new Set(short.map(({ month }) => month)), bundle)
  const days = battery.autonomy_days
  return [
    ...(runs === '' ? [] : [say`It runs: ${runs}.`]),
    ...bring(system, short, bundle),
    ...(days === null ? [] : [say`With no sun at all, a full battery lasts ${rough(days)} days.`]),
    ...badYear(figures, bundle),
    ...others(system, bundle),
  ]
}

/** Less than a hundredth is not worth a word (common practice, no source). */
const isShort = ({ unserved_wh_day: unmet, load_wh_day: load }: MonthFigures) =>
  unmet !== null && unmet >= 1 && unmet >= 0.01 * load

/** Loads that share their months come together: `the fridge and lights (May to September)`. */
function runsIn({ system }: ResolvedSystem, short: ReadonlySet<number>, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const groups = new Map<string, string[]>()
  for (const load of system.loads) {
    const months = monthsOf(load).filter((month) => !short.has(month))
    if (months.length === 0) continue
    const when = inMonths(months, bundle)
    groups.set(when, [...(groups.get(when) ?? []), load.name?.text ?? say`a load`])
  }
  return [...groups].map(([when, names]) => `${joinWords(names, bundle)} (${when})`).join('; ')
}

const monthsOf = ({ months }: Load) =>
  months.length > 0 ? months.map(({ value }) => value) : monthNames.map((_, m) => m + 1)

/** What must come from elsewhere, in ampere-hours at the battery, as a monitor of batteries counts them. */
function bring(system: ResolvedSystem, short: readonly MonthFigures[], bundle: Bundle | undefined): readonly string[] {
  const say = sayIn(bundle)
  const voltage = bankOf(system)?.voltage
  if (short.length === 0 || voltage === undefined) return []
  const needs = short.map(
    ({ month, unserved_wh_day: unmet }) =>
      say`in ${named(monthNames[month - 1]!)} ${Math.ceil(unmet! / voltage)} Ah a day`,
  )
  return [
    say`Sun and battery are not enough all year: bring ${joinWords(needs, bundle)} from ${elsewhere[system.system.kind?.value ?? 'cabin']}, or use less.`,
  ]
}

const elsewhere = {
  boat: phrase`the engine or a shore connection`,
  vehicle: phrase`the engine or a mains connection`,
  cabin: phrase`a generator`,
} as const

function badYear({ months, year }: Figures, bundle: Bundle | undefined): readonly string[] {
  const load = months.reduce((sum, { load_wh_day: wh }) => sum + (365 / 12) * wh, 0)
  const share = (year.unserved_p90_wh ?? 0) / load
  return share > 0.005
    ? [sayIn(bundle)`In one year of ten, ${roughPercent(share, bundle)} or more of what the loads take goes unmet.`]
    : []
}

function others({ system }: ResolvedSystem, bundle: Bundle | undefined): readonly string[] {
  const names = system.other_sources.flatMap(({ name }) => name?.text ?? [])
  return names.length > 0 ? [sayIn(bundle)`This counts on ${joinWords(names, bundle)} running as described.`] : []
}

const phrases = { id: 'promises', messages: { months: '{months}' } } as const satisfies Catalogue

const inMonths = (months: readonly number[], bundle: Bundle | undefined) =>
  inWords({ say: 'months', with: { months: monthsInWords([...months].sort((a, b) => a - b)) } }, phrases, bundle)
