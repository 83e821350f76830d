import { dot, line, ruleX, text } from '@observablehq/plot'
import type { Heat, MountedPower } from '../../values/picture/heat.ts'
import { whole } from '../numbers.ts'
import { chart } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'
import { sayIn } from '../../wording/phrase.ts'

const coldest = -10
const hottest = 100

/** Power in full sun against the temperature of the cells, with a hot day in each mounting. */
export function heatPicture(drawing: Drawing, { pmax_w: pmax, coefficient, pointer, mountings }: Heat): string {
  const say = sayIn(drawing.bundle)
  const at = (cell: number) => pmax * (1 + coefficient * (cell - 25))
  const ends = [coldest, hottest].map((cell) => ({ cell, power: at(cell) }))
  const labelOf = ({ mounting, cell_temperature_c: cell, pmax_w: left }: MountedPower) =>
    say`${mounting}: ${whole(left)} W with cells of ${whole(cell)} °C`
  return chart(drawing, {
    height: 250,
    label: say`Power in full sun against cell temperature. On a hot day, ${mountings.map(labelOf).join('; ')}`,
    x: { label: say`cell temperature, °C`, labelArrow: 'none', domain: [coldest, hottest] },
    y: { label: say`power in full sun, W`, labelArrow: 'none', nice: true, grid: true },
    marks: [
      ruleX([25], { strokeDasharray: '2 3' }),
      line(ends, { x: 'cell', y: 'power', stroke: colours.cool, strokeWidth: 2 }),
      dot(mountings, {
        x: 'cell_temperature_c',
        y: 'pmax_w',
        r: 5,
        fill: ({ own }: MountedPower) => (own ? colours.hot : colours.ground),
        stroke: colours.hot,
        href: () => `#${pointer}`,
        ariaLabel: labelOf,
      }),
      // the line falls to the right: labels have room to the left below it, and one of two close neighbours above it
      ...[true, false].map((left) =>
        text(mountings, {
          x: 'cell_temperature_c',
          y: 'pmax_w',
          text: ({ mounting, pmax_w: power, own }: MountedPower) =>
            own ? say`${mounting} ${whole(power)} W (here)` : `${mounting} ${whole(power)} W`,
          textAnchor: left ? 'end' : 'start',
          dx: left ? -9 : 4,
          dy: left ? 10 : -13,
          filter: ({ mounting }: MountedPower) => left === (mounting !== 'standoff'),
        }),
      ),
    ],
  })
}
