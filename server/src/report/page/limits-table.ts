import { formatNumber } from '../../quantities/format.ts'
import type { MonthFigures } from '../../review/figures.ts'
import { isKept, type Margin } from '../../review/margins.ts'
import { monthNames } from '../../findings/months.ts'
import { whole } from '../numbers.ts'
import type { Written } from '../units.ts'
import type { Table } from './blocks.ts'

/** Every limit with its figure; one that is not kept says so, or that the rest is not used. */
export function limitsTable(margins: readonly Margin[], { kilograms }: Written): Table {
  return {
    name: 'Limits that were checked',
    head: ['limit', 'figure'],
    figures: [1],
    rows: margins.map((margin) => {
      const { what, value, limit, unit, atLeast, unused } = margin
      const write = (v: number) => (unit === 'kg' ? kilograms(v) : `${formatNumber(v, 3)} ${unit}`)
      const bare = (v: number) => write(v).replace(/ \S+$/, '')
      const beyond = unused ? ', the rest is not used' : ': NOT KEPT'
      return [what, `${bare(value)} of ${atLeast ? 'at least ' : ''}${write(limit)}${isKept(margin) ? '' : beyond}`]
    }),
  }
}

export function monthsTable(months: readonly MonthFigures[]): Table {
  return {
    name: 'Energy by month, Wh a day',
    head: ['month', 'panels give', 'loads take', 'loads go without'],
    figures: [1, 2, 3],
    rows: months.map((m) => [
      monthNames[m.month - 1]!,
      whole(m.yield_wh_day),
      whole(m.load_wh_day),
      m.unserved_wh_day === null ? 'not known' : whole(m.unserved_wh_day),
    ]),
  }
}
