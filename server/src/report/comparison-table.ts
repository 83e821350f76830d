import { formatIn, formatNumber } from '../quantities/format.ts'
import type { Price } from '../review/figures.ts'
import type { SurfaceRow } from '../review/choosing/row.ts'
import { element, escaped, type Markup } from './svg/element.ts'

interface Column {
  readonly head: string
  readonly text: (row: SurfaceRow) => string
  /** What the column is sorted by; null is last either way. Without it, by the text. */
  readonly number?: (row: SurfaceRow) => number | null
}

const figure = (head: string, unit: string, of: (row: SurfaceRow) => number | null): Column => ({
  head,
  number: of,
  text: (row) => or(of(row), (value) => `${formatNumber(value, 3)} ${unit}`.trim()),
})
const price = (head: string, of: (row: SurfaceRow) => Price | null): Column => ({
  head,
  number: (row) => of(row)?.amount ?? null,
  text: (row) => or(of(row), ({ amount, currency }) => formatIn(amount, currency)),
})
const or = <T>(value: T | null, show: (value: T) => string) => (value === null ? 'not known' : show(value))

const columns: readonly Column[] = [
  { head: 'panel', text: ({ panel }) => panel },
  figure('count', '', ({ count }) => count),
  figure('a year', 'kWh', ({ kwh_year: kwh }) => kwh),
  figure('in full sun', 'W', ({ pmax_stc_w: watts }) => watts),
  figure('hot', 'W', ({ pmax_hot_w: watts }) => watts),
  figure('weight', 'kg', ({ weight_kg: kg }) => kg),
  price('price', (row) => row.price),
  price('per kWh', ({ price_per_kwh: each }) => each),
  {
    head: 'notes',
    text: ({ front, excluded, warranty_void: isVoid }) =>
      excluded ?? isVoid ?? (front ? 'no other panel is better' : ''),
  },
]

/** Rows carry what they are sorted by in `data-sort`, and the panel that they lead to. */
export function comparisonTable(surface: string, rows: readonly SurfaceRow[]): Markup {
  const head = columns.map(({ head }) =>
    element('th', { scope: 'col' }, element('button', { type: 'button' }, escaped(head))),
  )
  const body = rows.map((row) =>
    element(
      'tr',
      { 'data-field': `panel:${row.panel}`, class: row.excluded === null ? undefined : 'excluded' },
      ...columns.map((column) => cell(row, column)),
    ),
  )
  return element(
    'table',
    {},
    element('caption', {}, escaped(`Every panel of the library on ${surface}`)),
    element('thead', {}, element('tr', {}, ...head)),
    element('tbody', {}, ...body),
  )
}

function cell(row: SurfaceRow, { text, number, head }: Column): Markup {
  const written = escaped(text(row))
  if (head === 'panel') return element('th', { scope: 'row' }, element('button', { type: 'button' }, written))
  return element('td', number ? { class: 'figure', 'data-sort': number(row) ?? '' } : {}, written)
}
