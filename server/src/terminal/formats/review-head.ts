import { formatNumber } from '../../quantities/format.ts'
import type { Figures } from '../../review/figures.ts'
import { isKept, marginsOf, type Margin } from '../../review/margins.ts'
import type { ResolvedSystem } from '../../review/resolved.ts'
import { totalsOf, type ArrayParts, type Totals } from '../../review/totals.ts'
import { table } from '../tables/table.ts'

/** What the system is made of, with its totals. */
export function totalsText(system: ResolvedSystem, figures: Figures): string {
  const all = totalsOf(system, figures)
  const { arrays, battery } = all
  return table([
    ...arrays.map((array) => [`  ${array.id}`, inWords(array)]),
    ...(battery ? [['  battery', `${battery.count} x ${battery.name ?? 'a battery'}, ${battery.wiring}`]] : []),
    ['  in all', totals(all)],
  ])
}

/** `4 x Puffin 115, 2S2P, on Example MPPT 100/30`. */
function inWords({ panels, wiring, controller, shares_controller_with: other }: ArrayParts): string {
  const names = panels.map(({ name, count }) => `${count} x ${name}`).join(' and ')
  const on = other === null ? controller && `on ${controller}` : `on the controller of ${other}`
  return [names, wiring, on].filter(Boolean).join(', ')
}

function totals({ pmax_stc_w: watts, weight_kg: weight, price, parts_without_price: missing }: Totals): string {
  const without = missing > 0 ? ` without ${missing} part${missing > 1 ? 's' : ''} of no known price` : ''
  return [
    watts === null ? 'power not known' : `${formatNumber(watts, 3)} W of panels`,
    weight === null ? 'weight not known' : `${formatNumber(weight, 3)} kg of panels`,
    price ? `${formatNumber(price.amount, 4)} ${price.currency}${without}` : 'price not known',
  ].join(', ')
}

/** Each limit with what is left: `48.1 of 100 V`. */
export function marginsText(system: ResolvedSystem, figures: Figures): string {
  return table(marginsOf(system, figures).map((one) => [`  ${one.what}`, ...sides(one)]))
}

function sides(margin: Margin): readonly string[] {
  const { value, limit, unit, atLeast, unused } = margin
  const left = atLeast ? value / limit - 1 : 1 - value / limit
  const numbers = `${formatNumber(value, 3)} ${atLeast ? 'of at least' : 'of'} ${formatNumber(limit, 3)} ${unit}`
  if (!isKept(margin)) return [numbers, unused ? 'the rest is not used' : 'NOT KEPT']
  return [numbers, `${Math.round(100 * left)} % ${atLeast ? 'above' : 'left'}`]
}
