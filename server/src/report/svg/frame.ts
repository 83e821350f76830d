import { fontFamily, fontSize } from './chart.ts'
import { element, type Markup } from './element.ts'
import type { Drawing } from './link.ts'

interface Frame {
  readonly width: number
  readonly height: number
  /** What the picture shows, in a sentence with its numbers, for those who do not see it. */
  readonly label: string
}

/** A drawing of our own as SVG text, named and sized like a chart. */
export const framed = ({ links }: Drawing, { width, height, label }: Frame, ...parts: readonly Markup[]): string =>
  element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      width: Math.ceil(width),
      height: Math.ceil(height),
      'font-size': fontSize,
      'font-family': fontFamily,
      fill: 'currentColor',
      role: links ? 'group' : 'img',
      'aria-label': label,
    },
    ...parts,
  )
