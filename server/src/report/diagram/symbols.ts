import { colours } from '../svg/colours.ts'
import { n } from '../svg/dimension.ts'
import { element, type Markup } from '../svg/element.ts'

// Graphical symbols of IEC 60617 (from memory), each centred on a point of a horizontal wire.

const stroke = { stroke: 'currentColor', 'stroke-width': 1.5, fill: 'none' } as const
const lines = (d: string) => element('path', { ...stroke, d })
const box = (x: number, y: number, w: number, h: number) =>
  element('rect', { ...stroke, x: x - w / 2, y: y - h / 2, width: w, height: h, fill: colours.ground })

export const wire = (x1: number, x2: number, y: number): Markup => lines(`M${n(x1)},${n(y)}H${n(x2)}`)
export const drop = (x: number, y1: number, y2: number): Markup => lines(`M${n(x)},${n(y1)}V${n(y2)}`)
export const joint = (x: number, y: number): Markup => element('circle', { cx: x, cy: y, r: 3 })

/** Photovoltaic generator, 06-18-06: a cell in a box with two arrows of light. */
export const generator = (x: number, y: number): Markup =>
  element(
    'g',
    {},
    box(x, y, 36, 36),
    lines(`M${x - 18},${y}h16M${x + 3},${y}h15M${x - 2},${y - 10}v20M${x + 3},${y - 5}v10`),
    lines(`M${x - 15},${y - 16}l7,7m-4,0h4v-4M${x - 7},${y - 16}l7,7m-4,0h4v-4`),
  )

/** Fuse, 07-21-01. */
export const fuse = (x: number, y: number): Markup => element('g', {}, box(x, y, 24, 10), lines(`M${x - 12},${y}h24`))

/** Switch-disconnector, 07-13-08: a contact that opens, with the bar of a disconnector and the ring of a switch. */
export const disconnector = (x: number, y: number): Markup =>
  element(
    'g',
    {},
    element('rect', { x: x - 12, y: y - 2, width: 24, height: 4, fill: colours.ground }),
    lines(`M${x - 12},${y}L${x + 8},${y - 10}M${x + 12},${y - 5}v10`),
    element('circle', { ...stroke, cx: x + 9, cy: y, r: 2.5 }),
  )

/** Converter, 06-14-03: from direct to direct current, or to alternating current. */
export const converter = (x: number, y: number, to: 'dc' | 'ac'): Markup =>
  element(
    'g',
    {},
    box(x, y, 40, 40),
    lines(`M${x - 20},${y + 20}L${x + 20},${y - 20}`),
    lines(`M${x - 15},${y - 11}h12m-12,4h12`),
    to === 'dc' ? lines(`M${x + 3},${y + 8}h12m-12,4h12`) : lines(`M${x + 2},${y + 11}c3,-9 5,-9 7,-2s4,7 7,-2`),
  )

/** Battery of cells, 06-15-01. */
export const battery = (x: number, y: number): Markup =>
  lines(`M${x - 14},${y}h6M${x - 8},${y - 14}v28M${x - 3},${y - 7}v14M${x - 3},${y}h6m0,-14v28m5,-21v14m0,-7h6`)

/** Load or source that is not drawn further: an arrow from or to the bus. */
export const arrow = (x: number, y: number, towards: 'right' | 'left'): Markup =>
  element('path', { d: towards === 'right' ? `M${x},${y - 5}l9,5l-9,5z` : `M${x + 9},${y - 5}l-9,5l9,5z` })
