import { areaY, line, ruleY, text } from '@observablehq/plot'
import type { Charge } from '../../review/picture/charge.ts'
import { monthNames } from '../../findings/months.ts'
import { whole } from '../numbers.ts'
import { chart } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'
import { translated } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** How full the battery is through a usual year, from the lowest to the highest of each day. */
export function chargePicture(drawing: Drawing, { days, floor, pointer }: Charge): string {
  const lowest = days.reduce((least, day) => (day.lowest < least.lowest ? day : least))
  const say = sayIn(drawing.bundle)
  const names = monthNames.map((name) => translated(name, drawing.bundle))
  const month = names[Math.min(11, Math.floor((12 * (lowest.day - 1)) / days.length))]!
  const percent = (share: number) => 100 * share
  return chart(drawing, {
    height: 176,
    label: say`How full the battery is through a usual year: lowest in ${month} at ${whole(percent(lowest.lowest))} %; it is not used below ${whole(percent(floor))} %`,
    legend: [
      { label: say`over each day`, colour: colours.panel, shape: 'bar' },
      { label: say`lowest of the day`, colour: colours.cool },
    ],
    x: {
      label: null,
      domain: [1, days.length],
      ticks: monthNames.map((_, m) => 1 + ((m + 0.5) * days.length) / 12),
      tickSize: 0,
      tickFormat: (day: number) => names[Math.floor((12 * day) / (days.length + 1))]!.slice(0, 1),
    },
    y: { label: say`% full`, labelArrow: 'none', domain: [0, 100], grid: true },
    marginBottom: 24,
    marks: [
      areaY(days, {
        x: 'day',
        y1: ({ lowest: low }) => percent(low),
        y2: ({ highest }) => percent(highest),
        fill: colours.panel,
      }),
      line(days, { x: 'day', y: ({ lowest: low }) => percent(low), stroke: colours.cool, strokeWidth: 1.5 }),
      ruleY([percent(floor)], {
        stroke: colours.hot,
        strokeDasharray: '7 3',
        strokeWidth: 2,
        href: () => `#${pointer}`,
        ariaLabel: () => say`battery`,
      }),
      text([floor], {
        x: () => 1,
        y: percent,
        text: () => say`not used below`,
        textAnchor: 'start',
        dy: floor > 0.1 ? 9 : -9,
        dx: 4,
      }),
    ],
  })
}
