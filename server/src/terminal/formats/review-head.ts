import { formatNumber } from '../../quantities/format.ts'
import type { Figures } from '../../review/figures.ts'
import { isKept, marginsOf, type Margin } from '../../review/margins.ts'
import type { ResolvedSystem } from '../../review/resolved.ts'
import { totalsOf, type ArrayParts, type Totals } from '../../review/totals.ts'
import { table } from '../tables/table.ts'
import { figure } from '../../findings/message.ts'
import { joinWords } from '../../findings/join-words.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { figureInWords } from '../../wording/figure.ts'
import { sayIn } from '../../wording/phrase.ts'

/** What the system is made of, with its totals. */
export function totalsText(system: ResolvedSystem, figures: Figures, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const all = totalsOf(system, figures)
  const { arrays, battery } = all
  return table([
    ...arrays.map((array) => [`  ${array.id}`, inWords(array, bundle)]),
    ...(battery
      ? [[`  ${say`battery`}`, `${battery.count} x ${battery.name ?? say`a battery`}, ${battery.wiring}`]]
      : []),
    [`  ${say`in all`}`, totals(all, bundle)],
  ])
}

/** `4 x Puffin 115, 2S2P, on Example MPPT 100/30`. */
function inWords(
  { panels, wiring, controller, shares_controller_with: other }: ArrayParts,
  bundle: Bundle | undefined,
): string {
  const say = sayIn(bundle)
  const names = joinWords(
    panels.map(({ name, count }) => `${count} x ${name}`),
    bundle,
  )
  const on = other === null ? controller && say`on ${controller}` : say`on the controller of ${other}`
  return [names, wiring, on].filter(Boolean).join(', ')
}

function totals(
  { pmax_stc_w: watts, weight_kg: weight, price, parts_without_price: missing }: Totals,
  bundle: Bundle | undefined,
): string {
  const say = sayIn(bundle)
  const amount = price && `${formatNumber(price.amount, 4)} ${price.currency}`
  const paid =
    amount && missing > 0
      ? missing > 1
        ? say`${amount} without ${missing} parts of no known price`
        : say`${amount} without 1 part of no known price`
      : amount
  return [
    watts === null ? say`power not known` : say`${formatNumber(watts, 3)} W of panels`,
    weight === null ? say`weight not known` : say`${figure(weight, 'kg')} of panels`,
    paid ?? say`price not known`,
  ].join(', ')
}

/** Each limit with what is left: `48.1 of 100 V`. */
export function marginsText(system: ResolvedSystem, figures: Figures, bundle: Bundle | undefined): string {
  return table(marginsOf(system, figures, bundle).map((one) => [`  ${one.what}`, ...sides(one, bundle)]))
}

function sides(margin: Margin, bundle: Bundle | undefined): readonly string[] {
  const say = sayIn(bundle)
  const { value, limit, unit, atLeast, unused } = margin
  const left = atLeast ? value / limit - 1 : 1 - value / limit
  const [own, most] = [
    figureInWords({ value, unit, digits: 3, bare: true }, bundle),
    figureInWords({ value: limit, unit, digits: 3 }, bundle),
  ]
  const numbers = atLeast ? say`${own} of at least ${most}` : say`${own} of ${most}`
  if (!isKept(margin)) return [numbers, unused ? say`the rest is not used` : say`NOT KEPT`]
  // a limit of no volts or less is reported where it is typed
  if (limit <= 0) return [numbers, '']
  const percent = Math.round(100 * left)
  return [numbers, atLeast ? say`${percent} % above` : say`${percent} % left`]
}
