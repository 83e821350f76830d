import { formatNumber } from '../quantities/format.ts'
import { monthNames } from '../findings/months.ts'
import type { Figures } from './figures.ts'
import type { Bundle } from '../wording/bundle.ts'
import { named, sayIn } from '../wording/phrase.ts'

/** How much larger than its loads a system may be before that is worth a word (common practice, no source). */
const [muchInAnyMonth, muchInTheMean] = [3, 5]

/** A sentence about panels that give far more than the loads take; nothing where they do not. */
export function tooLarge({ months }: Pick<Figures, 'months'>, bundle?: Bundle): string | null {
  const used = months.filter(({ load_wh_day: load }) => load > 0)
  if (used.length === 0) return null
  const mean = (of: (month: (typeof used)[number]) => number) => used.reduce((sum, m) => sum + of(m), 0) / used.length
  const [given, taken] = [mean((m) => m.yield_wh_day), mean((m) => m.load_wh_day)]
  const ratio = (m: (typeof used)[number]) => m.yield_wh_day / m.load_wh_day
  const worst = used.reduce((least, m) => (ratio(m) < ratio(least) ? m : least))
  if (ratio(worst) < muchInAnyMonth && given < muchInTheMean * taken) return null
  return sayIn(
    bundle,
  )`Far larger than its loads: the panels give ${kilowatthours(given)} kWh on a mean day, and the loads take ${kilowatthours(taken)} kWh; in ${named(monthNames[worst.month - 1]!)}, the leanest month, ${kilowatthours(worst.yield_wh_day)} against ${kilowatthours(worst.load_wh_day)}.`
}

const kilowatthours = (wh: number) => formatNumber(wh / 1000, 2)
