import { dot, line, text } from '@observablehq/plot'
import type { SurfaceRow } from '../../review/choosing/row.ts'
import { tenths, whole } from '../numbers.ts'
import { chart } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'

/** More would lie over each other. */
const mostNames = 12

interface Known extends SurfaceRow {
  readonly weight_kg: number
  readonly kwh_year: number
}

/** Energy of a year against weight of every panel on one surface; those that no other betters are filled and joined. */
export function scatterPicture(drawing: Drawing, rows: readonly SurfaceRow[]): string {
  const known = rows.filter((row): row is Known => row.weight_kg !== null && row.kwh_year !== null)
  if (known.length === 0) return ''
  const front = known.filter(({ front }) => front).sort((a, b) => a.weight_kg - b.weight_kg)
  const told = (row: Known) =>
    `${row.panel}: ${whole(row.kwh_year)} kWh a year, ${tenths(row.weight_kg)} kg${row.front ? ', no other is better' : ''}${row.excluded === null ? '' : `, excluded: ${row.excluded}`}`
  return chart(drawing, {
    width: 560,
    height: 340,
    label: `Energy of a year against weight. ${known.map(told).join('; ')}`,
    legend: [
      { label: 'no other is better', colour: colours.cool },
      { label: 'x cannot be taken', colour: colours.hot, dash: '2 3' },
    ],
    x: { label: 'weight of all panels, kg', labelArrow: 'none', nice: true, zero: true, grid: true },
    y: { label: 'kWh a year', labelArrow: 'none', nice: true, zero: true, grid: true },
    marks: [
      line(front, { x: 'weight_kg', y: 'kwh_year', stroke: colours.cool, curve: 'step-after' }),
      dot(known, {
        x: 'weight_kg',
        y: 'kwh_year',
        r: 6,
        symbol: ({ excluded }: Known) => (excluded === null ? 'circle' : 'times'),
        fill: ({ front, excluded }: Known) => (front && excluded === null ? colours.cool : 'none'),
        stroke: ({ excluded }: Known) => (excluded === null ? colours.cool : colours.hot),
        strokeWidth: 2,
        href: ({ panel }: Known) => `#panel:${panel}`,
        ariaLabel: told,
      }),
      text(known.length > mostNames ? front : known, {
        x: 'weight_kg',
        y: 'kwh_year',
        text: 'panel',
        textAnchor: 'start',
        dx: 9,
        dy: -8,
      }),
    ],
  })
}
