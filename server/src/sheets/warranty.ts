import { folded } from '../records/concepts.ts'
import { numbersIn, unitInLabel, type Decimal } from './numbers.ts'
import { around, boxOf, type Piece } from './page.ts'
import type { Reading } from './sheet.ts'

const years = /(\d{1,2}) ?-? ?(?:years?|yrs?|jahren?|jahrige|anos|ans|annees|jaar|jaren|anni)\b/g
const product =
  /product|produ[ck]t|prodotto|producto|produit|workmanship|material|fabric|herstell|craft|manufactur|fattura|defect|difett|defaut|mangel|factory|werks|usine|fabriek/
const output =
  /power|output|perform|leistung|potenc|puissanc|vermogen|potenza|rendement|\bresa\b|linear|linea|rated|nominal/
const promise = /warrant|guarant|garan/
const named =
  /warrant|guarant|garan|product|produit|producto|prodotto|power output|at least|mindest|rated power|nennleistung|workmanship|after|nach|tras|apres|na\b|dopo/

interface Promise {
  readonly years: number
  readonly share?: string
  readonly piece: Piece
}

/** Promises of years, in sentences and in cells: a share of the power, or the product itself. */
export function warrantyIn(pages: readonly (readonly Piece[])[], decimal: Decimal): readonly Reading[] {
  const workmanship: Promise[] = []
  const any: Promise[] = []
  const steps: (Promise & { share: string })[] = []
  for (const pieces of pages)
    for (const place of pieces)
      for (const text of statements(place, pieces)) {
        const plain = folded(text)
        const found = new Set([...plain.matchAll(years)].map(([, n]) => Number(n)))
        const [count] = found
        if (count === undefined || found.size !== 1 || !named.test(plain)) continue
        const shares = numbersIn(text, decimal).filter((n) => n.unit === '%' && n.value >= 60 && n.value <= 100)
        const ofProduct = product.test(plain.replace(/production/g, ''))
        if (shares.length === 1 && !ofProduct) steps.push({ years: count, share: shares[0]!.number, piece: place })
        else if (shares.length === 0 && ofProduct && !output.test(plain))
          workmanship.push({ years: count, piece: place })
        else if (shares.length === 0 && promise.test(plain) && !output.test(plain))
          any.push({ years: count, piece: place })
      }
  const made = new Map(steps.map((s) => [`${s.years} ${s.share}`, s]))
  const sorted = [...made.values()].sort((a, b) => a.years - b.years)
  const clear = new Set(sorted.map((s) => s.years)).size === sorted.length
  const own = workmanship.length > 0 ? workmanship : any
  const one = new Set(own.map((w) => w.years)).size === 1 ? own : []
  return [
    ...one.slice(-1).map(({ years, piece }) => at('/warranty/workmanship/years', String(years), piece)),
    ...(clear ? sorted : []).flatMap(({ years, share, piece }, i) => [
      at(`/warranty/output/${i}/years`, String(years), piece),
      at(`/warranty/output/${i}/at_least`, `${share} %`, piece),
    ]),
  ]
}

const at = (field: string, typed: string, place: Piece): Reading => ({
  field,
  typed,
  also: [],
  text: place.text,
  label: place.text,
  page: place.page,
  box: around([boxOf(place)]),
})

/** What a text says of years: alone, with the lines that go on below it, with the cell beside it, or with the one above. */
function statements(piece: Piece, pieces: readonly Piece[]): readonly string[] {
  const parts = piece.text.split(/\s[·•|]\s|;\s|(?<=\p{L}{3})\.\s/u)
  if (parts.length > 1) return parts
  const unit = unitInLabel(piece.text) === 'years' ? ' years' : ''
  const own = folded(piece.text)
  if (own.match(years) || (!promise.test(own) && !/\d/.test(own) && !named.test(own)))
    return [goingOn(piece, piece.text, pieces)]
  const line = pieces.filter((p) => p.x > piece.right && Math.abs(p.y - piece.y) < 0.8 * piece.size)
  const beside = [...line].sort((a, b) => a.x - b.x)[0]
  const next = beside && [...line].sort((a, b) => a.x - b.x)[1]
  const more = next && /^\d+$/.test(beside.text) ? ` ${next.text}` : ''
  if (beside && beside.text.length < 60) return [goingOn(piece, `${piece.text} ${beside.text}${more}${unit}`, pieces)]
  const above = pieces.find(
    (p) => 0 < piece.y - p.y && piece.y - p.y < 1.6 * p.size && p.x < piece.right && piece.x < p.right,
  )
  return [goingOn(piece, above && folded(above.text).match(years) ? `${above.text} ${piece.text}` : piece.text, pieces)]
}

function goingOn(piece: Piece, start: string, pieces: readonly Piece[]): string {
  let text = start
  let last = piece
  for (let i = 0; i < 2 && !/[.!)]$/.test(text); i++) {
    const next = pieces.find(
      (p) =>
        p.font === piece.font &&
        p.y - last.y > 0 &&
        p.y - last.y < 1.4 * piece.size &&
        Math.abs(p.x - piece.x) < 0.5 * piece.size,
    )
    if (!next || /^\d/.test(next.text) || folded(next.text).match(years) || next.text.length > last.text.length + 3)
      break
    text += ` ${next.text}`
    last = next
  }
  return text
}
