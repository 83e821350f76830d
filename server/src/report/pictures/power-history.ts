import { dot, line, ruleX, text } from '@observablehq/plot'
import type { PowerHistory } from '../../review/picture/power-history.ts'
import { tenths, whole } from '../numbers.ts'
import { chart } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'
import { sayIn } from '../../wording/phrase.ts'

type Point = PowerHistory['points'][number]

/** What is left of an array's power by year, with its uncertainty, its trend, and what the warranty promises. */
export function powerHistoryPicture(drawing: Drawing, history: PowerHistory): string {
  const { id, points, trend, warranted, until, ending } = history
  if (points.length === 0) return ''
  const labelOf = ({ date, left, uncertainty }: Point) =>
    `${date}: ${whole(100 * left)} % ± ${tenths(100 * uncertainty)} %`
  const say = sayIn(drawing.bundle)
  const promise = warranted.map(({ until: age, share }) => say`${whole(100 * share)} % until year ${tenths(age)}`)
  const lowest = Math.min(
    ...points.map(({ left, uncertainty }) => left - uncertainty),
    ...warranted.map(({ share }) => share),
  )
  return chart(drawing, {
    height: 210,
    label: [
      say`Power left of ${id} by year. ${points.map(labelOf).join('; ')}. Warranted: ${promise.join(', ') || say`nothing`}.`,
      ...(trend ? [say`At this pace ${ending}.`] : []),
    ].join(' '),
    legend: [
      { label: say`measured`, colour: colours.cool },
      { label: say`warranted`, colour: colours.hot, dash: '7 3' },
    ],
    x: { label: say`years`, labelArrow: 'none', domain: [0, until] },
    y: {
      label: say`% of the expected power`,
      labelArrow: 'none',
      domain: [Math.max(0, 100 * lowest - 5), 105],
      grid: true,
    },
    marks: [
      ...warranted.map(({ from, until: to, share }) =>
        line(
          [from, to].map((age) => [age, 100 * share]),
          { stroke: colours.hot, strokeWidth: 2, strokeDasharray: '7 3' },
        ),
      ),
      ...(trend
        ? [
            line(
              [0, until].map((age) => [age, 100 * (trend.start + trend.slope * age)]),
              { stroke: colours.cool, strokeDasharray: '2 3' },
            ),
          ]
        : []),
      ruleX(points, {
        x: 'years',
        y1: ({ left, uncertainty }: Point) => 100 * (left - uncertainty),
        y2: ({ left, uncertainty }: Point) => 100 * (left + uncertainty),
        stroke: colours.cool,
      }),
      dot(points, {
        x: 'years',
        y: ({ left }: Point) => 100 * left,
        r: 4,
        fill: colours.cool,
        href: ({ pointer }: Point) => `#${pointer}`,
        ariaLabel: labelOf,
      }),
      text(points, {
        x: 'years',
        y: ({ left }: Point) => 100 * left,
        text: ({ left }: Point) => `${whole(100 * left)} %`,
        dx: 5,
        dy: -9,
        textAnchor: 'start',
      }),
    ],
  })
}
