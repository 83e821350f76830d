import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { usualFor } from '../band.ts'

/** What box and handling of one panel cost beside its watts, in USD: a panel of 10 W is sold for 4 or 5 USD/W. */
const handling = 25

/** USD per watt. Rigid and folding include small retail panels. */
const usual = { flexible: [1, 8], rigid: [0.2, 3], folding: [0.8, 10] } as const

export const pricePerWattUnusual = panelRule({
  id: 'price-per-watt-unusual',
  severity: 'warning',
  reason:
    'A price per watt outside the usual band is a missing digit, a pack of several, or cents typed as whole money.',
  source: 'common practice, no source; `price_bands` in wattproof.yaml replaces it',
  messages: {
    unusual:
      'The price {amount} is {perWatt} {currency}/W, outside {low} to {high} {currency}/W that is usual for {panel}',
  },

  check({ stc: { pmax }, price: { amount }, construction }, { settings }) {
    if (!pmax || !amount || pmax.value <= 0) return null
    const own = construction && settings?.price_bands[construction.value]
    const { panel, ...band } = usualFor(usual, { construction })
    const { low, high } =
      own?.low && own.high
        ? { low: own.low.value, high: own.high.value }
        : { ...band, high: rounded(band.high + handling / pmax.value) }
    const currency = amount.quantity.unit
    const perWatt = amount.value / pmax.value
    if (low <= perWatt && perWatt <= high) return null
    const far = perWatt < low / 3 || perWatt > high * 3
    return {
      say: 'unusual',
      with: { amount, perWatt: figure(perWatt), currency, low, high, panel },
      suspects: [amount, pmax],
      severity: far ? 'warning' : 'information',
    }
  },
})

/** A bound with no more digits than it is worth. */
const rounded = (bound: number): number => Number(bound.toPrecision(2))
