import { formatNumber } from '../../quantities/format.ts'
import { costOf } from '../../review/cost.ts'
import type { Figures } from '../../review/figures.ts'
import { marginsOf, type Margin } from '../../review/margins.ts'
import type { ResolvedArray, ResolvedSystem } from '../../review/resolved.ts'
import { countOf } from '../../review/strings.ts'
import { monthNames } from '../../findings/months.ts'
import { table } from '../table.ts'

/** What the system is made of, with its totals. */
export function totalsText(system: ResolvedSystem, figures: Figures): string {
  const { battery } = system
  const { in_series: series, in_parallel: parallel } = system.system.battery
  const bank = `${(series?.value ?? 1) * (parallel?.value ?? 1)} x ${battery?.record.name?.text ?? 'a battery'}, ${series?.value ?? 1}S${parallel?.value ?? 1}P`
  return table([
    ...system.arrays.map((array, i) => [`  ${figures.arrays[i]!.id}`, inWords(array)]),
    ...(battery ? [['  battery', bank]] : []),
    ['  in all', totals(system, figures)],
  ])
}

/** `4 x Puffin 115, 2S2P, on Example MPPT 100/30`. */
function inWords({ panels, entry, controller, shares }: ResolvedArray): string {
  const names = panels.map(
    (one) => `${countOf(one)} x ${one.panel?.record.name?.text ?? one.entry.panel.id?.text ?? 'a panel'}`,
  )
  const { in_series: series, in_parallel: parallel } = entry.wiring
  const wired = series && parallel ? [`${series.value}S${parallel.value}P`] : []
  const name = controller?.record.name?.text ?? entry.controller.id?.text
  const on = shares ? `on the controller of ${entry.shares_controller_with?.text}` : `on ${name}`
  return [names.join(' and '), ...wired, ...(name ? [on] : [])].join(', ')
}

function totals(system: ResolvedSystem, { arrays }: Figures): string {
  const sum = (of: (array: Figures['arrays'][number]) => number | null) =>
    arrays.reduce<number | null>((all, array) => {
      const one = of(array)
      return all === null || one === null ? null : all + one
    }, 0)
  const watts = sum((a) => a.pmax_stc_w)
  const weight = sum((a) => a.weight_kg)
  const currency =
    arrays.find(({ price }) => price)?.price?.currency ?? system.battery?.record.price.amount?.quantity.unit
  const cost = currency ? costOf(system, currency) : null
  const without =
    cost && cost.missing.length > 0
      ? ` without ${cost.missing.length} part${cost.missing.length > 1 ? 's' : ''} of no known price`
      : ''
  return [
    watts === null ? 'power not known' : `${formatNumber(watts, 3)} W of panels`,
    weight === null ? 'weight not known' : `${formatNumber(weight, 3)} kg of panels`,
    cost && currency ? `${formatNumber(cost.amount, 4)} ${currency}${without}` : 'price not known',
  ].join(', ')
}

/** Each limit with what is left: `48.1 of 100 V`. */
export function marginsText(system: ResolvedSystem, figures: Figures): string {
  return table(marginsOf(system, figures).map((one) => [`  ${one.what}`, ...sides(one)]))
}

function sides({ value, limit, unit, atLeast }: Margin): readonly string[] {
  const left = atLeast ? value / limit - 1 : 1 - value / limit
  const numbers = `${formatNumber(value, 3)} ${atLeast ? 'of at least' : 'of'} ${formatNumber(limit, 3)} ${unit}`
  return [numbers, left < 0 ? 'NOT KEPT' : `${Math.round(100 * left)} % ${atLeast ? 'above' : 'left'}`]
}

/** How much larger than its loads a system may be before that is worth a word (common practice, no source). */
const [muchInAnyMonth, muchInTheMean] = [3, 5]

/** A sentence about panels that give far more than the loads take; nothing where they do not. */
export function tooLarge({ months }: Figures): string | null {
  const used = months.filter(({ load_wh_day: load }) => load > 0)
  if (used.length === 0) return null
  const mean = (of: (month: (typeof used)[number]) => number) => used.reduce((sum, m) => sum + of(m), 0) / used.length
  const [given, taken] = [mean((m) => m.yield_wh_day), mean((m) => m.load_wh_day)]
  const ratio = (m: (typeof used)[number]) => m.yield_wh_day / m.load_wh_day
  const worst = used.reduce((least, m) => (ratio(m) < ratio(least) ? m : least))
  if (ratio(worst) < muchInAnyMonth && given < muchInTheMean * taken) return null
  return `Far larger than its loads: the panels give ${kilowatthours(given)} kWh on a mean day, and the loads take ${kilowatthours(taken)} kWh; in ${monthNames[worst.month - 1]}, the leanest month, ${kilowatthours(worst.yield_wh_day)} against ${kilowatthours(worst.load_wh_day)}.`
}

const kilowatthours = (wh: number) => formatNumber(wh / 1000, 2)
