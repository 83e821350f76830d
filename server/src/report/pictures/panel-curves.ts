import { dot, line, ruleY } from '@observablehq/plot'
import type { Curve, CurvePoint } from '../../values/picture/curves.ts'
import type { PanelPicture, TypedPoint } from '../../values/picture/panel-picture.ts'
import { chart, type LegendEntry } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'
import { whole } from '../numbers.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

const look: Readonly<Record<Curve['id'], { readonly colour: string; readonly dash?: string }>> = {
  stc: { colour: colours.cool },
  hot: { colour: colours.hot, dash: '7 3' },
  noct: { colour: colours.sun, dash: '2 3' },
  weak: { colour: colours.weak, dash: '8 3 2 3' },
}

/** Current against voltage, with the typed ratings on it. Empty where no curve is known. */
export const currentCurves = (drawing: Drawing, panel: PanelPicture): string =>
  curves(drawing, panel, 'i', 'A', 'current', ({ ampere }) => ampere)

/** Power against voltage. */
export const powerCurves = (drawing: Drawing, panel: PanelPicture): string =>
  curves(drawing, panel, 'p', 'W', 'power', ({ ampere, volt }) => ampere * volt)

function curves(
  drawing: Drawing,
  { curves: list, typed, name }: PanelPicture,
  side: keyof CurvePoint,
  unit: string,
  what: 'current' | 'power',
  of: (point: TypedPoint) => number,
): string {
  if (list.length === 0) return ''
  const drawn = typed.filter(({ curve }) => list.some(({ id }) => id === curve))
  const say = sayIn(drawing.bundle)
  const best = list.map((one) => say`${whole(one.best.p)} W in ${translated(one.label, drawing.bundle)}`).join(', ')
  const count = list.length
  return chart(drawing, {
    height: 250,
    label:
      what === 'current'
        ? say`current against voltage of ${name}, ${count} curves; at most ${best}`
        : say`power against voltage of ${name}, ${count} curves; at most ${best}`,
    legend: list.map((one) => entry(one, drawing.bundle)),
    x: { label: say`voltage, V`, labelArrow: 'none', domain: [0, highest(list, drawn)], nice: true },
    y: {
      label: `${what === 'current' ? say`current` : say`power`}, ${unit}`,
      labelArrow: 'none',
      nice: true,
      grid: true,
    },
    marks: [
      ruleY([0]),
      ...list.map(({ id, points }) =>
        line(points, {
          x: 'v',
          y: side,
          stroke: look[id].colour,
          strokeWidth: 2,
          strokeDasharray: look[id].dash ?? 'none',
        }),
      ),
      dot(drawn, {
        x: 'volt',
        y: of,
        r: 5,
        fill: ({ curve }: TypedPoint) => look[curve].colour,
        stroke: colours.ground,
        href: ({ pointer }: TypedPoint) => `#${pointer}`,
        ariaLabel: ({ name, text, curve }: TypedPoint) => `${curve === 'noct' ? 'NOCT ' : ''}${name} ${text}`,
      }),
    ],
  })
}

const entry = ({ id, label, cell_temperature_c: cell }: Curve, bundle: Bundle | undefined): LegendEntry => ({
  label: `${translated(label, bundle)}, ${whole(cell)} °C`,
  ...look[id],
})

const highest = (list: readonly Curve[], typed: readonly TypedPoint[]) =>
  Math.max(...list.flatMap(({ points }) => points.map(({ v }) => v)), ...typed.map(({ volt }) => volt))
