import type { Derived } from './derived.ts'
import { pmax, price } from './inputs.ts'

export const pricePerWatt: Derived = {
  id: 'price_per_watt',
  label: 'price per watt',
  unit: ([money]) => (money ? `${money.unit}/W` : 'per W'),
  formula: 'price / Pmax',
  source: 'definition; over the rated power',
  pointer: '/price/amount',
  needs: [price, pmax],
  compute: (money, p) => money / p,
}
