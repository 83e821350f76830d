import { element, escaped, type Markup } from './element.ts'

interface Ends {
  readonly from: number
  readonly to: number
  /** Where the line runs. */
  readonly at: number
  readonly text: string
}

const tick = 4

/** A dimension line along x with its text below it. */
export const acrossX = ({ from, to, at, text }: Ends): Markup =>
  element(
    'g',
    { stroke: 'currentColor', fill: 'none' },
    element('path', { d: `M${n(from)},${n(at)}H${n(to)}${slash(from, at)}${slash(to, at)}` }),
    label((from + to) / 2, at + 13, text, 'middle'),
  )

/** A dimension line along y with its text turned beside it. */
export const acrossY = ({ from, to, at, text }: Ends): Markup =>
  element(
    'g',
    { stroke: 'currentColor', fill: 'none' },
    element('path', { d: `M${n(at)},${n(from)}V${n(to)}${slash(at, from)}${slash(at, to)}` }),
    element(
      'text',
      { transform: `translate(${n(at - 5)},${n((from + to) / 2)}) rotate(-90)`, 'text-anchor': 'middle', ...plain },
      escaped(text),
    ),
  )

/** Text that is filled and not outlined, whatever stands around it. */
export const label = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): Markup =>
  element('text', { x, y, 'text-anchor': anchor, ...plain }, escaped(text))

const plain = { fill: 'currentColor', stroke: 'none' } as const

/** An oblique stroke, as ends of dimension lines are marked in building drawings. */
const slash = (x: number, y: number) => `M${n(x - tick)},${n(y + tick)}L${n(x + tick)},${n(y - tick)}`

export const n = (value: number) => String(Math.round(value * 10) / 10)
