import { dot, line, text } from '@observablehq/plot'
import type { SurfaceRow } from '../../review/choosing/row.ts'
import { tenths, whole } from '../numbers.ts'
import { chart } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'
import { sayIn } from '../../wording/phrase.ts'

/** More would lie over each other. */
const mostNames = 12

interface Known extends SurfaceRow {
  readonly weight_kg: number
  readonly kwh_year: number
}

/**
 * Energy of a year against weight of every panel on one surface. Those that no other betters, price included, are filled; a line joins
 * those that give most for their weight.
 */
export function scatterPicture(drawing: Drawing, rows: readonly SurfaceRow[]): string {
  const known = rows.filter((row): row is Known => row.weight_kg !== null && row.kwh_year !== null)
  if (known.length === 0) return ''
  const edge = edgeOf(known)
  const named = known.length > mostNames ? known.filter(({ front }) => front) : known
  const heaviest = Math.max(...known.map(({ weight_kg: kg }) => kg))
  const say = sayIn(drawing.bundle)
  const labelOf = (row: Known) =>
    [
      say`${row.panel}: ${whole(row.kwh_year)} kWh a year, ${tenths(row.weight_kg)} kg`,
      ...(row.front ? [say`no other is better`] : []),
      ...(row.excluded === null ? [] : [say`excluded: ${row.excluded}`]),
    ].join(', ')
  return chart(drawing, {
    width: 430,
    height: 300,
    marginRight: 24,
    label: say`Energy of a year against weight. ${known.map(labelOf).join('; ')}`,
    legend: [
      { label: say`no other is better`, colour: colours.cool, shape: 'dot' },
      { label: say`cannot be taken`, colour: colours.hot, shape: 'cross' },
      { label: say`most for its weight`, colour: colours.cool },
    ],
    x: { label: say`weight of all panels, kg`, labelArrow: 'none', nice: true, zero: true, grid: true },
    y: { label: say`kWh a year`, labelArrow: 'none', nice: true, zero: true, grid: true },
    marks: [
      line(edge, { x: 'weight_kg', y: 'kwh_year', stroke: colours.cool, curve: 'step-after' }),
      dot(known, {
        x: 'weight_kg',
        y: 'kwh_year',
        r: 6,
        symbol: ({ excluded }: Known) => (excluded === null ? 'circle' : 'times'),
        fill: ({ front, excluded }: Known) => (front && excluded === null ? colours.cool : 'none'),
        stroke: ({ excluded }: Known) => (excluded === null ? colours.cool : colours.hot),
        strokeWidth: 2,
        href: ({ panel }: Known) => `#panel:${panel}`,
        ariaLabel: labelOf,
      }),
      // a name has room on one side
      ...(['start', 'end'] as const).map((textAnchor) =>
        text(named, {
          x: 'weight_kg',
          y: 'kwh_year',
          text: 'panel',
          textAnchor,
          dx: textAnchor === 'start' ? 9 : -9,
          dy: -8,
          filter: ({ weight_kg: kg }: Known) => (textAnchor === 'end') === 0.6 * heaviest < kg,
        }),
      ),
    ],
  })
}

/** What gives more than all that are no heavier, from the lightest on. */
function edgeOf(known: readonly Known[]): readonly Known[] {
  const lightestFirst = known
    .filter(({ excluded }) => excluded === null)
    .sort((a, b) => a.weight_kg - b.weight_kg || b.kwh_year - a.kwh_year)
  let most = 0
  return lightestFirst.filter(({ kwh_year: energy }) => {
    const isMore = most < energy
    most = Math.max(most, energy)
    return isMore
  })
}
