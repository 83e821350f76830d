import { plot, type Markish, type PlotOptions } from '@observablehq/plot'
import { DOMImplementation, XMLSerializer, type Element } from '@xmldom/xmldom'
import { visible } from '../../text/visible.ts'
import type { Drawing } from './link.ts'

/** One entry of a legend, drawn as it looks in the picture. */
export interface LegendEntry {
  readonly label: string
  readonly colour: string
  readonly dash?: string
  readonly shape?: 'bar' | 'dot' | 'cross'
}

export interface ChartOptions extends Pick<
  PlotOptions,
  'x' | 'y' | 'color' | 'marginLeft' | 'marginRight' | 'marginBottom'
> {
  readonly width?: number
  readonly height: number
  readonly marks: readonly Markish[]
  readonly legend?: readonly LegendEntry[]
  /** What the picture shows, in a sentence with its numbers, for those who do not see it. */
  readonly label: string
}

/** Two charts side by side fill the width of a page, and 12 px are 9 pt on it. */
const usualWidth = 336
export const fontSize = 12
export const fontFamily = "'Liberation Sans', Arial, Helvetica, sans-serif"

const svg = 'http://www.w3.org/2000/svg'

/** A chart as SVG text, without a browser. A mark whose `href` is `#` and a JSON pointer leads to that field. */
export function chart(
  drawing: Drawing,
  { legend = [], label, width = usualWidth, height, ...options }: ChartOptions,
): string {
  const document = new DOMImplementation().createDocument(svg, 'svg')
  const rows = legendRows(legend)
  // has all that the library asks of a document
  const drawn: unknown = document
  const root = plot({
    document: drawn as PlotOptions['document'],
    width,
    height,
    marginTop: underLabel + 8 + rows.length * legendRow,
    marginBottom: 40,
    marginLeft: 48,
    ...options,
    marks: [...options.marks],
  }) as unknown as Element
  for (const style of [...root.childNodes].filter(({ nodeName }) => nodeName === 'style')) root.removeChild(style)
  root.removeAttribute('class')
  root.setAttribute('font-size', String(fontSize))
  root.setAttribute('font-family', fontFamily)
  name(root, label, drawing)
  lead(root, drawing)
  clean(root)
  rows.forEach((row, i) => drawRow(root, row, underLabel + legendRow * (i + 0.5)))
  return new XMLSerializer().serializeToString(root)
}

/** The label of the vertical axis is above the legend. */
const underLabel = 17
const legendRow = 16
const columnWidth = 166

const legendRows = (entries: readonly LegendEntry[]) =>
  entries.length === 0 ? [] : entries.length <= 2 ? [entries] : [entries.slice(0, 2), entries.slice(2)]

function drawRow(root: Element, row: readonly LegendEntry[], y: number): void {
  row.forEach(({ label, colour, dash, shape }, column) => {
    const x = 8 + columnWidth * column
    if (shape === 'bar') add(root, 'rect', { x, y: y - 5, width: 22, height: 10, fill: colour, stroke: 'currentColor' })
    else if (shape === 'dot') add(root, 'circle', { cx: x + 11, cy: y, r: 5, fill: colour })
    else if (shape === 'cross')
      add(root, 'path', { d: `M${x + 6},${y - 5}l10,10m0,-10l-10,10`, stroke: colour, 'stroke-width': 2 })
    else
      add(root, 'path', { d: `M${x},${y}h22`, stroke: colour, 'stroke-width': '2', 'stroke-dasharray': dash ?? 'none' })
    add(root, 'text', { x: x + 28, y, dy: '0.35em', 'text-anchor': 'start' }).textContent = label
  })
}

function add(root: Element, tag: string, attributes: Readonly<Record<string, string | number>>): Element {
  const made = root.ownerDocument!.createElementNS(svg, tag)
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value))
  root.appendChild(made)
  return made
}

/** With links in it a picture is a group, as the parts of an image are not read out. */
function name(root: Element, label: string, { links }: Drawing): void {
  root.setAttribute('role', links ? 'group' : 'img')
  root.setAttribute('aria-label', visible(label))
}

/** Spells out signs that would not be seen, and cuts what is too exact. Only what leads somewhere has a name: the library names its groups, which are nothing to read out. */
function clean(root: Element): void {
  for (const one of within(root)) {
    const label = one.getAttribute('aria-label')
    if (label !== null && one.hasAttribute('data-field')) one.setAttribute('aria-label', visible(label))
    else one.removeAttribute('aria-label')
    for (const { name, value } of [...one.attributes])
      if (geometry.has(name))
        one.setAttribute(
          name,
          value.replace(longNumber, (number) => String(Number(Number(number).toFixed(6)))),
        )
    for (const child of [...one.childNodes])
      if (child.nodeType === textNode) child.nodeValue = visible(child.nodeValue ?? '')
  }
}

/** Cut where nobody sees it: the last digit of a figure depends on the version of Node that works it out. */
const geometry = new Set(['x', 'y', 'width', 'height', 'x1', 'x2', 'y1', 'y2', 'cx', 'cy', 'r', 'd', 'transform'])
const longNumber = /(?<![\d.])\d{1,6}\.\d{7,}(?:e-?\d{1,3})?/g

/** All elements in one, without the library's own lists, which look again at every step. */
function within(element: Element): readonly Element[] {
  const found: Element[] = []
  for (let child = element.firstChild; child; child = child.nextSibling)
    if (child.nodeType === elementNode) found.push(child as Element, ...within(child as Element))
  return found
}

const elementNode = 1
const textNode = 3

/** Makes of the library's links what `linkTo` makes, or nothing. */
function lead(root: Element, { links }: Drawing): void {
  for (const anchor of within(root).filter(({ tagName }) => tagName === 'a')) {
    const target = anchor.getAttributeNS('http://www.w3.org/1999/xlink', 'href') ?? anchor.getAttribute('href') ?? ''
    const group = root.ownerDocument!.createElementNS(svg, 'g')
    for (const { name, value } of [...anchor.attributes]) if (!/href/.test(name)) group.setAttribute(name, value)
    for (const child of [...anchor.childNodes]) group.appendChild(child)
    const [mark] = [...group.childNodes] as Element[]
    const label = mark?.getAttribute?.('aria-label')
    if (links && label) {
      mark!.removeAttribute('aria-label')
      group.setAttribute('data-field', target.slice(1))
      group.setAttribute('role', 'button')
      group.setAttribute('tabindex', '0')
      group.setAttribute('aria-label', label)
    }
    anchor.parentNode!.replaceChild(group, anchor)
  }
}
