import { ruleX, ruleY, text, tickX } from '@observablehq/plot'
import type { VoltageWindow } from '../../review/picture/windows.ts'
import { tenths } from '../numbers.ts'
import { chart } from '../svg/chart.ts'
import { colours } from '../svg/colours.ts'
import type { Drawing } from '../svg/link.ts'
import { sayIn } from '../../wording/phrase.ts'

interface Known extends VoltageWindow {
  readonly vmp_hot_v: number
  readonly voc_cold_v: number
}

/** The voltage of each array's strings from the hottest day to the coldest morning, between the limits. Empty where none is known. */
export function windowsPicture(drawing: Drawing, windows: readonly VoltageWindow[]): string {
  const known = windows.filter((one): one is Known => one.vmp_hot_v !== null && one.voc_cold_v !== null)
  if (known.length === 0) return ''
  const say = sayIn(drawing.bundle)
  const labelOf = ({ id, vmp_hot_v: hot, voc_cold_v: cold, least_v: least, most_v: most }: Known) =>
    [
      say`${id}: ${tenths(hot)} V on a hot day, ${tenths(cold)} V in the cold`,
      ...(least === null ? [] : [say`at least ${tenths(least)} V`]),
      ...(most === null ? [] : [say`at most ${tenths(most)} V`]),
    ].join(', ')
  const limits = (side: 'least_v' | 'most_v') => known.filter((one) => one[side] !== null)
  return chart(drawing, {
    height: 58 + 26 * known.length,
    label: say`Voltage of the strings against the limits of the controller. ${known.map(labelOf).join('; ')}`,
    legend: [
      { label: say`hot day to cold day`, colour: colours.cool },
      { label: say`controller’s limits`, colour: colours.hot, dash: '3 2' },
    ],
    x: {
      label: null,
      tickFormat: (volts: number) => `${volts} V`,
      domain: [0, 1.06 * Math.max(...known.flatMap((k) => [k.voc_cold_v, k.most_v ?? 0]))],
    },
    y: { label: null, domain: known.map(({ id }) => id), type: 'band' },
    marginLeft: 90,
    marginBottom: 22,
    marks: [
      ruleX([0]),
      ruleY(known, {
        y: 'id',
        x1: 'vmp_hot_v',
        x2: 'voc_cold_v',
        stroke: colours.cool,
        strokeWidth: 8,
        href: ({ pointer }: Known) => `#${pointer}`,
        ariaLabel: labelOf,
      }),
      ...(['least_v', 'most_v'] as const).map((side) =>
        tickX(limits(side), { y: 'id', x: side, stroke: colours.hot, strokeWidth: 2.5, strokeDasharray: '3 2' }),
      ),
      text(known, { y: 'id', x: 'vmp_hot_v', text: ({ vmp_hot_v: v }: Known) => tenths(v), dy: -12 }),
      text(known, { y: 'id', x: 'voc_cold_v', text: ({ voc_cold_v: v }: Known) => tenths(v), dy: -12 }),
      text(limits('most_v'), {
        y: 'id',
        x: 'most_v',
        text: ({ most_v: v }: Known) => `${tenths(v!)}`,
        dx: -4,
        textAnchor: 'end',
      }),
    ],
  })
}
