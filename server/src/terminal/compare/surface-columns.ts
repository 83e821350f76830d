import type { SurfaceRow } from '../../review/choosing/row.ts'
import { monthNames } from '../../findings/months.ts'
import { moneyCell, numberCell, textCell, unknown, type Column } from '../tables/column.ts'

type C = Column<SurfaceRow>

const column = (key: string, label: string, better: 'more' | 'less' | undefined, cell: C['cell']): C => ({
  key,
  label,
  ...(better && { better }),
  cell,
})

const dash = { value: '', text: '-' }

const panel = column('panel', 'panel', undefined, (row) => textCell(row.panel))

/** How many panels a row's figures are of, and how many fit. */
function countOf({ count, proven, strings }: SurfaceRow): string {
  const taken = strings ? strings.in_series * strings.in_parallel : count
  return `${taken === count ? '' : `${taken} of `}${count}${proven ? '' : ' or more'}`
}

export const isPart = ({ count, strings }: SurfaceRow): boolean =>
  strings !== null && strings.in_series * strings.in_parallel < count

/** What the text shows where no columns are named. */
export const shownColumns: readonly C[] = [
  panel,
  column('front', 'on the front', undefined, (row) => textCell(row.front ? 'yes' : 'no')),
  column('count', 'panels', 'more', (row) => ({ value: row.count, text: countOf(row) })),
  column('strings', 'strings', undefined, ({ strings }) => {
    if (!strings) return unknown
    const text = `${strings.in_series} in series x ${strings.in_parallel}`
    return { value: text, text }
  }),
  column('pmax_stc_w', 'rated', 'more', (row) => numberCell(row.pmax_stc_w, 0, 'W')),
  column('pmax_hot_w', 'when hot', 'more', (row) => numberCell(row.pmax_hot_w, 0, 'W')),
  column('worst_wh_day', 'a day of the worst month', 'more', (row) =>
    numberCell(row.wh_day && Math.min(...row.wh_day), 0, 'Wh'),
  ),
  column('kwh_year', 'a year', 'more', (row) => numberCell(row.kwh_year, 0, 'kWh')),
  column('weight_kg', 'weight', 'less', (row) => numberCell(row.weight_kg, 1, 'kg')),
  column('price', 'price', 'less', (row) => moneyCell(row.price, 0)),
  column('price_per_kwh', 'per warranted kWh', 'less', (row) => moneyCell(row.price_per_kwh, 3)),
  column('warranty_years', 'warranty', 'more', (row) => numberCell(row.warranty_years, 0, 'years')),
  column('controller', 'controller', undefined, ({ strings }) => textCell(strings?.controller ?? null)),
]

/** All of them, of which --columns, --sort and --filter choose. */
export const surfaceColumns: readonly C[] = [
  ...shownColumns,
  ...monthNames.map((month, m) =>
    column(`wh_day_${month.toLowerCase()}`, month, 'more', (row) => numberCell(row.wh_day?.[m] ?? null, 0, 'Wh')),
  ),
  column('proven', 'proven', undefined, (row) => textCell(row.proven ? 'yes' : 'no')),
  column('warranty_void', 'warranty void', undefined, (row) => textCell(row.warranty_void, dash)),
  column('excluded', 'excluded', undefined, (row) => textCell(row.excluded, dash)),
  column('not_known', 'not known', undefined, (row) => textCell(row.not_known.join(', ') || null, dash)),
]
