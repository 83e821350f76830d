import type { Derived, Input } from './derived.ts'
import { price } from './inputs.ts'
import { warrantedEnergy, warrantedEnergyLacks } from './warranted-energy.ts'
import { inCatalogue } from '../wording/phrase.ts'

const energy: Input = {
  missing: warrantedEnergyLacks,
  find: warrantedEnergy,
}

export const pricePerKwh: Derived = {
  id: 'price_per_kwh',
  label: 'price per kilowatt-hour',
  unit: ([money]) => (money ? `${money.unit}/kWh` : 'per kWh'),
  formula: inCatalogue`price / energy over the output warranty, hot and degraded as warranted`,
  source: 'hour-by-hour year of the panel, lying flat, as mounted, at the guaranteed share of each warranty step',
  uncertainty: 'about ±10 % from one year to the next; real modules usually keep more than is guaranteed',
  pointer: '/price/amount',
  needs: [price, energy],
  compute: (money, kwh) => money / kwh,
}
