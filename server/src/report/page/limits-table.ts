import { formatNumber } from '../../quantities/format.ts'
import type { MonthFigures } from '../../review/figures.ts'
import { isKept, type Margin } from '../../review/margins.ts'
import { monthNames } from '../../findings/months.ts'
import { whole } from '../numbers.ts'
import type { Written } from '../units.ts'
import type { Table } from './blocks.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

type Say = ReturnType<typeof sayIn>

/** Every limit with its figure; one that is not kept says so, or that the rest is not used. */
export function limitsTable(margins: readonly Margin[], { kilograms }: Written, say: Say): Table {
  return {
    name: say`Limits that were checked`,
    head: [say`limit`, say`figure`],
    figures: [1],
    rows: margins.map((margin) => {
      const { what, value, limit, unit, atLeast, unused } = margin
      const write = (v: number) => (unit === 'kg' ? kilograms(v) : `${formatNumber(v, 3)} ${unit}`)
      const bare = (v: number) => write(v).replace(/ \S+$/, '')
      const [own, most] = [bare(value), write(limit)]
      const figure = atLeast ? say`${own} of at least ${most}` : say`${own} of ${most}`
      if (isKept(margin)) return [what, figure]
      return [what, unused ? say`${figure}, the rest is not used` : say`${figure}: NOT KEPT`]
    }),
  }
}

export function monthsTable(months: readonly MonthFigures[], bundle: Bundle | undefined): Table {
  const say = sayIn(bundle)
  return {
    name: say`Energy by month, Wh a day`,
    head: [say`month`, say`panels give`, say`loads take`, say`loads go without`],
    figures: [1, 2, 3],
    rows: months.map((m) => [
      translated(monthNames[m.month - 1]!, bundle),
      whole(m.yield_wh_day),
      whole(m.load_wh_day),
      m.unserved_wh_day === null ? say`not known` : whole(m.unserved_wh_day),
    ]),
  }
}
