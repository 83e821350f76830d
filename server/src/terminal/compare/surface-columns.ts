import type { Strings, SurfaceRow } from '../../review/choosing/row.ts'
import { monthNames } from '../../findings/months.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue, named, phrase, phraseInWords, sayIn } from '../../wording/phrase.ts'
import { answerCell, moneyCell, numberCell, textCell, unknown, type Column } from '../../rows/cell.ts'

type C = Column<SurfaceRow>

const column = (key: string, label: C['label'], better: 'more' | 'less' | undefined, cell: C['cell']): C => ({
  key,
  label,
  ...(better && { better }),
  cell,
})

const dash = { value: '', text: '-' }

const panel = column('panel', inCatalogue`panel`, undefined, (row) => textCell(row.panel))

/** How many panels a row's figures are of, and how many fit. */
function countOf({ count, proven, strings }: SurfaceRow, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const taken = strings ? wiredIn(strings) : count
  const most = proven ? String(count) : say`${count} or more`
  return taken === count ? most : say`${taken} of ${most}`
}

export const isPart = ({ count, strings }: SurfaceRow): boolean => strings !== null && wiredIn(strings) < count

const wiredIn = ({ in_series: series, in_parallel: parallel }: Strings) => series * parallel

/** What the text shows where no columns are named. */
export const shownColumns: readonly C[] = [
  panel,
  column('front', inCatalogue`on the front`, undefined, (row, bundle) => answerCell(row.front, bundle)),
  column('count', inCatalogue`panels`, 'more', (row, bundle) => ({ value: row.count, text: countOf(row, bundle) })),
  column('strings', inCatalogue`strings`, undefined, ({ strings }, bundle) => {
    if (!strings) return unknown
    const said = phrase`${strings.in_series} in series x ${strings.in_parallel}`
    return { value: phraseInWords(said), text: phraseInWords(said, bundle) }
  }),
  column('pmax_stc_w', inCatalogue`rated`, 'more', (row) => numberCell(row.pmax_stc_w, 0, 'W')),
  column('pmax_hot_w', inCatalogue`when hot`, 'more', (row) => numberCell(row.pmax_hot_w, 0, 'W')),
  column('worst_wh_day', inCatalogue`a day in the worst month`, 'more', (row) =>
    numberCell(row.wh_day && Math.min(...row.wh_day), 0, 'Wh'),
  ),
  column('kwh_year', inCatalogue`a year`, 'more', (row) => numberCell(row.kwh_year, 0, 'kWh')),
  column('weight_kg', inCatalogue`weight`, 'less', (row, bundle) => numberCell(row.weight_kg, 1, 'kg', 1, bundle)),
  column('price', inCatalogue`price`, 'less', (row) => moneyCell(row.price, 0)),
  column('price_per_kwh', inCatalogue`per warranted kWh`, 'less', (row) => moneyCell(row.price_per_kwh, 3)),
  column('warranty_years', inCatalogue`warranty`, 'more', ({ warranty_years: years }, bundle) =>
    years === null ? unknown : { value: years, text: sayIn(bundle)`${years.toFixed(0)} years` },
  ),
  column('controller', inCatalogue`controller`, undefined, ({ strings }) => textCell(strings?.controller ?? null)),
]

/** All of them, of which --columns, --sort and --filter choose. */
export const surfaceColumns: readonly C[] = [
  ...shownColumns,
  ...monthNames.map((month, m) =>
    column(`wh_day_${month.toLowerCase()}`, phrase`a day in ${named(month)}`, 'more', (row) =>
      numberCell(row.wh_day?.[m] ?? null, 0, 'Wh'),
    ),
  ),
  column('proven', inCatalogue`proven`, undefined, (row, bundle) => answerCell(row.proven, bundle)),
  column('warranty_void', inCatalogue`warranty void`, undefined, (row) => textCell(row.warranty_void, dash)),
  column('excluded', inCatalogue`excluded`, undefined, (row) => textCell(row.excluded, dash)),
  column('not_known', inCatalogue`not known`, undefined, ({ not_known: names }, bundle) =>
    names.length === 0
      ? dash
      : { value: names.join(', '), text: names.map((name) => translated(name, bundle)).join(', ') },
  ),
  // what the text says in the cells of other columns
  column('currency', inCatalogue`currency`, undefined, (row) => textCell(row.price?.currency ?? null)),
  column('wired', inCatalogue`panels wired`, 'more', ({ strings }) => numberCell(strings && wiredIn(strings), 0)),
]
