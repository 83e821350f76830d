import { folded } from './concepts.ts'
import { numbersIn, type Decimal } from './numbers.ts'
import { around, boxOf, type Piece } from './page.ts'
import type { Reading } from './sheet.ts'

const years = /(\d{1,2}) ?-? ?(?:years?|yrs?|jahren?|jahrige|anos|ans|annees|jaar|jaren|anni)\b/g
const product =
  /product|produ[ck]t|prodotto|producto|produit|workmanship|material|fabrica|herstell|craft|manufactur|fattura|defect|mangel/
const output = /power|output|perform|leistung|potenc|puissanc|vermogen|potenza|linear|linea|rated|nominal/
const promise =
  /warrant|guarant|garan|product|produit|producto|prodotto|power output|at least|mindest|rated power|nennleistung|workmanship|after|nach|tras|apres|na\b|dopo/

/** Promises of years, in sentences and in cells: a share of the power, or the product itself. */
export function warrantyIn(pages: readonly (readonly Piece[])[], decimal: Decimal): readonly Reading[] {
  const workmanship: { years: number; place: Piece }[] = []
  const steps: { years: number; share: string; place: Piece }[] = []
  for (const pieces of pages)
    for (const piece of pieces) {
      const text = sentence(piece, pieces)
      const plain = folded(text)
      const found = [...plain.matchAll(years)].map(([, n]) => Number(n))
      if (found.length !== 1 || !promise.test(plain)) continue
      const shares = numbersIn(text, decimal).filter((n) => n.unit === '%' && n.value >= 60 && n.value <= 100)
      if (shares.length === 1 && !product.test(plain.replace(/production/g, '')))
        steps.push({ years: found[0]!, share: shares[0]!.number, place: piece })
      else if (shares.length === 0 && product.test(plain) && !output.test(plain))
        workmanship.push({ years: found[0]!, place: piece })
    }
  const made = new Map(steps.map((s) => [`${s.years} ${s.share}`, s]))
  const sorted = [...made.values()].sort((a, b) => a.years - b.years)
  const clear = new Set(sorted.map((s) => s.years)).size === sorted.length
  const one = new Set(workmanship.map((w) => w.years)).size === 1 ? workmanship : []
  return [
    ...one.slice(-1).map(({ years, place }) => at('/warranty/workmanship/years', String(years), place)),
    ...(clear ? sorted : []).flatMap(({ years, share, place }, i) => [
      at(`/warranty/output/${i}/years`, String(years), place),
      at(`/warranty/output/${i}/at_least`, `${share} %`, place),
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

/** A line with those that go on below it, and with the cell beside it. */
function sentence(piece: Piece, pieces: readonly Piece[]): string {
  const beside = pieces.find(
    (p) => p.x > piece.right && p.x - piece.right < 25 * piece.size && Math.abs(p.y - piece.y) < 0.4 * piece.size,
  )
  let text = beside && beside.text.length < 60 ? `${piece.text} ${beside.text}` : piece.text
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
