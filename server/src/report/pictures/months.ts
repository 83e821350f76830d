import { axisX, barY, ruleY, tickY } from '@observablehq/plot'
import type { MonthFigures } from '../../review/figures.ts'
import { monthNames } from '../../findings/months.ts'
import { whole } from '../numbers.ts'
import { chart } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'
import { translated } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** What the panels give and the loads take on a mean day of each month. Empty without a climate. */
export function monthsPicture(drawing: Drawing, months: readonly MonthFigures[]): string {
  if (months.length === 0) return ''
  const say = sayIn(drawing.bundle)
  const nameOf = (month: number) => translated(monthNames[month - 1]!, drawing.bundle)
  const labelOf = (m: MonthFigures) =>
    say`${nameOf(m.month)}: panels give ${whole(m.yield_wh_day)} Wh a day, loads take ${whole(m.load_wh_day)}`
  const short = months.filter(({ unserved_wh_day: unmet }) => (unmet ?? 0) >= 1)
  return chart(drawing, {
    height: 176,
    label: say`Energy by month. ${months.map(labelOf).join('; ')}`,
    legend: [
      { label: say`panels give`, colour: colours.panel, shape: 'bar' },
      { label: say`loads take`, colour: colours.hot },
      ...(short.length > 0 ? [{ label: say`loads go without`, colour: colours.hot, shape: 'bar' as const }] : []),
    ],
    x: { label: null, domain: months.map(({ month }) => month), padding: 0.15, type: 'band' },
    y: { label: say`Wh a day`, labelArrow: 'none', nice: true, grid: true, tickFormat: plainly },
    marginBottom: 24,
    marks: [
      axisX({ tickSize: 0, tickFormat: (month: number) => nameOf(month).slice(0, 1) }),
      barY(months, {
        x: 'month',
        y: 'yield_wh_day',
        fill: colours.panel,
        stroke: 'currentColor',
        href: () => '#/arrays',
        ariaLabel: labelOf,
      }),
      tickY(months, { x: 'month', y: 'load_wh_day', stroke: colours.hot, strokeWidth: 3, href: () => '#/loads' }),
      barY(short, { x: 'month', y: 'unserved_wh_day', fill: colours.hot, insetLeft: 6, insetRight: 6 }),
      ruleY([0]),
    ],
  })
}

/** A comma would be a decimal sign to half of the world. */
const plainly = (value: number) => String(value)
