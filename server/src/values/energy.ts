import type { Derived, Input } from './derived.ts'
import { monthNames } from '../findings/months.ts'
import { panelYear, yearLacks } from './panel-year.ts'
import { inCatalogue } from '../wording/phrase.ts'

const source =
  'hour by hour: sky Perez et al. (1990), face Martin and Ruiz (2001), cell temperature Ross (1981), power De Soto et al. (2006)'
const uncertainty =
  'about ±10 % from one year to the next, and what wiring, controller, dirt and shade take is not in it'

const input = (unit: string, pick: (year: { months: readonly number[]; total: number }) => number): Input => ({
  missing: yearLacks,
  find(panel, site) {
    const year = panelYear(panel, site)
    const climate = site.climate?.name?.text ?? 'the library'
    return year
      ? { name: inCatalogue`climate of`, value: pick(year), unit, text: `${climate}, ${year.model}`, pointer: null }
      : undefined
  },
})

export const energyPerYear: Derived = {
  id: 'energy_per_year',
  label: 'energy of a year, lying flat',
  unit: 'kWh',
  formula: inCatalogue`sum over the hours of a mean year, as mounted, before losses outside the panel`,
  source,
  uncertainty,
  pointer: '/stc/pmax',
  needs: [input('kWh', (year) => year.total / 1000)],
  compute: (kwh) => kwh,
}

/** Energy of a mean day of each month; listed where a climate is known. */
export const energyOfMonths: readonly Derived[] = monthNames.map((month, m) => ({
  id: `energy_per_day_${month.toLowerCase()}`,
  label: `energy of a day in ${month}, lying flat`,
  unit: 'Wh',
  formula: inCatalogue`sum over the hours of a mean day, as mounted, before losses outside the panel`,
  source,
  uncertainty,
  pointer: '/stc/pmax',
  needs: [input('Wh', (year) => year.months[m]!)],
  compute: (wh) => wh,
}))
