import { certificatesIn } from './certificates.ts'
import { ratingsAmong } from './electric.ts'
import { withConditions } from './conditions.ts'
import { candidateOf, type Candidate } from './fits.ts'
import { modelsOf, type Placed } from './models.ts'
import { decimalOf } from './numbers.ts'
import { asShown, type Page, type Piece } from './page.ts'
import { piecesOf } from './pieces.ts'
import { restAmong } from './rest.ts'
import { clausesOf } from './prose.ts'
import { rowsOf } from './rows.ts'
import { unreadable, type Reading, type Sheet, type SheetModel } from './sheet.ts'
import type { Choice } from './electric.ts'
import { cellsOf } from './tables.ts'
import { warrantyIn } from './warranty.ts'
import { inCatalogue } from '../wording/phrase.ts'

/** What the pages of a datasheet print for the fields of a record, model by model. */
export function readSheet(pages: readonly Page[]): Sheet {
  const all = pages.map(piecesOf)
  if (all.every((pieces) => pieces.length === 0))
    return unreadable(inCatalogue`it has no text: a scan or a drawing`, pages.length)
  const decimal = decimalOf(all.flat().map(({ text }) => text))
  const rows = all.map((pieces) => rowsOf(pieces, decimal))
  const cells = all.flatMap((pieces, i) => cellsOf(rows[i]!, pieces, 1000 * i, decimal))
  const said = all.flatMap((pieces, i) => clausesOf(pieces, rows[i]!, decimal))
  const { names, placed } = modelsOf([
    ...cells.map((cell) => candidateOf(cell, decimal)),
    ...said.map((cell) => lessSure(candidateOf(cell, decimal))),
  ])
  const shared = [...warrantyIn(all, decimal), ...certificatesIn(all)]
  const models =
    names.length < 2
      ? onPages(names[0] ?? '', placed, all.flat()).map((one) => ({
          ...one,
          readings: [...one.readings, ...shared.filter(({ page }) => (one.page ?? page) === page)],
        }))
      : names.map((name, i) => ({
          name,
          readings: [...readingsOf(placed.filter(({ model }) => model === i || model === -1)), ...shared],
        }))
  const problem = models.every(({ readings }) => readings.length === 0) ? 'no value of a panel is found in it' : null
  const shown = (one: Reading): Reading => ({ ...one, box: asShown(one.box, pages[one.page - 1]!) })
  return { pages: pages.length, models: models.map((m) => ({ ...m, readings: m.readings.map(shown) })), problem }
}

/** What a sentence says counts where it names the field and no table does. */
const lessSure = (one: Candidate): Candidate => ({
  ...one,
  fits: one.fits.filter(({ named }) => named === 3).map((fit) => ({ ...fit, named: 2 })),
})

/** One product; or several that have a page each, with ratings of their own. */
function onPages(name: string, cells: readonly Placed[], pieces: readonly Piece[]): readonly SheetModel[] {
  const pages = [...new Set(cells.map(({ cell }) => cell.page))]
  const own = pages.filter((page) => {
    const readings = readingsOf(cells.filter(({ cell }) => cell.page === page))
    return ['/stc/pmax', '/stc/voc', '/stc/isc'].every((field) => readings.some((r) => r.field === field))
  })
  if (own.length < 2) return [{ name, readings: readingsOf(cells) }]
  const models = own.map((page) => ({
    name: `page ${page}`,
    page,
    readings: readingsOf(cells.filter(({ cell }) => cell.page === page || !own.includes(cell.page))),
  }))
  const power = models.map(({ readings }) => readings.find(({ field }) => field === '/stc/pmax')!.typed)
  if (new Set(power).size < models.length) return [{ name, readings: readingsOf(cells) }]
  const titles = models.map(({ page }, i) =>
    titleOf(
      pieces.filter((one) => one.page === page),
      power[i]!,
    ),
  )
  const isNamed = titles.every(Boolean) && new Set(titles).size === models.length
  return models.map((one, i) => (isNamed ? { ...one, name: titles[i]! } : one))
}

/** The name in large print on a page of one product: it has its watts in it. */
function titleOf(pieces: readonly Piece[], power: string): string | undefined {
  const watts = parseFloat(power)
  const usual = [...pieces].sort((a, b) => a.size - b.size)[pieces.length >> 1]?.size ?? 0
  return pieces
    .filter(({ text, size }) => size > 1.25 * usual && text.length <= 30 && /^\p{L}/u.test(text))
    .filter(({ text }) => text.match(/\d+/g)?.some((digits) => Number(digits) === watts))
    .sort((a, b) => b.size - a.size)[0]?.text
}

function readingsOf(cells: readonly Placed[]): readonly Reading[] {
  const pool = withConditions(cells)
  const stc = ratingsAmong(pool.filter(({ condition }) => condition !== 'noct'))
  const noct = ratingsAmong(pool.filter(({ condition }) => condition === 'noct'))
  const rest = restAmong(pool, stc)
  return [
    ...Object.entries(stc).map(([key, choice]) => reading(`/stc/${key}`, choice)),
    ...Object.entries(noct).map(([key, choice]) => reading(`/noct/${key}`, choice)),
    ...[...rest].map(([field, choice]) => reading(field, choice)),
  ]
}

const reading = (field: string, { from: { cell }, fit }: Choice): Reading => ({
  field,
  typed: fit.typed,
  also: fit.also,
  text: cell.text,
  label: cell.columns > 1 && cell.heads.length > 0 ? `${cell.label} ${cell.heads.join(' ')}`.trim() : cell.label,
  page: cell.page,
  box: cell.box,
})
