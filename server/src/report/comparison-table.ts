import { formatIn, formatNumber } from '../quantities/format.ts'
import type { Price } from '../review/figures.ts'
import type { SurfaceRow } from '../review/choosing/row.ts'
import { element, escaped, type Markup } from './svg/element.ts'
import { translated, type Bundle } from '../wording/bundle.ts'
import { inCatalogue, sayIn } from '../wording/phrase.ts'

type Say = ReturnType<typeof sayIn>

interface Column {
  readonly head: string
  readonly text: (row: SurfaceRow, say: Say) => string
  /** What the column is sorted by; null is last either way. Without it, by the text. */
  readonly number?: (row: SurfaceRow) => number | null
}

const figure = (head: string, unit: string, of: (row: SurfaceRow) => number | null): Column => ({
  head,
  number: of,
  text: (row, say) => or(say, of(row), (value) => `${formatNumber(value, 3)} ${unit}`.trim()),
})
const price = (head: string, of: (row: SurfaceRow) => Price | null): Column => ({
  head,
  number: (row) => of(row)?.amount ?? null,
  text: (row, say) => or(say, of(row), ({ amount, currency }) => formatIn(amount, currency)),
})
const or = <T>(say: Say, value: T | null, show: (value: T) => string) => (value === null ? say`not known` : show(value))

const columns: readonly Column[] = [
  { head: inCatalogue`panel`, text: ({ panel }) => panel },
  figure(inCatalogue`count`, '', ({ count }) => count),
  figure(inCatalogue`a year`, 'kWh', ({ kwh_year: kwh }) => kwh),
  figure(inCatalogue`in full sun`, 'W', ({ pmax_stc_w: watts }) => watts),
  figure(inCatalogue`hot`, 'W', ({ pmax_hot_w: watts }) => watts),
  figure(inCatalogue`weight`, 'kg', ({ weight_kg: kg }) => kg),
  price(inCatalogue`price`, (row) => row.price),
  price(inCatalogue`per kWh`, ({ price_per_kwh: each }) => each),
  {
    head: inCatalogue`notes`,
    text: ({ front, excluded, warranty_void: isVoid }, say) =>
      excluded ?? isVoid ?? (front ? say`no other panel is better` : ''),
  },
]

/** Rows carry what they are sorted by in `data-sort`, and the panel that they lead to. */
export function comparisonTable(surface: string, rows: readonly SurfaceRow[], bundle: Bundle | undefined): Markup {
  const say = sayIn(bundle)
  const head = columns.map(({ head }) =>
    element('th', { scope: 'col' }, element('button', { type: 'button' }, escaped(translated(head, bundle)))),
  )
  const body = rows.map((row) =>
    element(
      'tr',
      { 'data-field': `panel:${row.panel}`, class: row.excluded === null ? undefined : 'excluded' },
      ...columns.map((column) => cell(row, column, say)),
    ),
  )
  return element(
    'table',
    {},
    element('caption', {}, escaped(say`Every panel of the library on ${surface}`)),
    element('thead', {}, element('tr', {}, ...head)),
    element('tbody', {}, ...body),
  )
}

function cell(row: SurfaceRow, column: Column, say: Say): Markup {
  const { text, number } = column
  const written = escaped(text(row, say))
  if (column === columns[0]) return element('th', { scope: 'row' }, element('button', { type: 'button' }, written))
  return element('td', number ? { class: 'figure', 'data-sort': number(row) ?? '' } : {}, written)
}
