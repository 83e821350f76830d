import { conditionIn, folded } from '../records/concepts.ts'
import { numbersIn, type Decimal } from './numbers.ts'
import { around, boxOf, type Piece } from './page.ts'
import type { Row } from './row.ts'
import type { Cell } from './tables.ts'

/**
 * Quantities in sentences and headings: `Open-circuit voltage is 22.8 V; short-circuit current is 3.40 A.` The words of
 * the clause are the label. Tables say the same more reliably, so whoever reads these lets tables win.
 */
export function clausesOf(pieces: readonly Piece[], rows: readonly Row[], decimal: Decimal): readonly Cell[] {
  const used = new Set(rows.flatMap(({ values }) => values.map(({ x, y }) => `${x} ${y}`)))
  return pieces
    .filter((p) => /\d/.test(p.text) && !used.has(`${p.x} ${p.y}`))
    .flatMap((piece, at) =>
      clauses(piece.text).flatMap((clause, part) => {
        const numbers = numbersIn(clause, decimal)
        // of two numbers of one kind the words do not say which is which
        const units = numbers.filter(({ join }) => join === null).map(({ unit }) => unit)
        if (units.length === 0 || new Set(units).size < units.length) return []
        if (praise.test(folded(clause)) || conditionIn(clause.replace(/n[mo][oc]t/gi, '')) !== null) return []
        const label = numbers.reduceRight(
          (text, { start, end }) => `${text.slice(0, start)} ${text.slice(end)}`,
          clause,
        )
        return {
          page: piece.page,
          table: -1 - at,
          row: part,
          text: clause,
          box: around([boxOf(piece)]),
          label,
          heads: [],
          heading: '',
          unit: null,
          column: -1,
          columns: 1,
        }
      }),
    )
}

/** The best of a series, or what the panel adds to something. */
const praise = /\b(?:up to|bis zu|jusqu|hasta|fino a|tot wel|as much as|only|nur|adds?|more|mehr|above|uber)\b/

const clauses = (text: string): readonly string[] => text.split(/[;•]\s|(?<=\p{L}{2}|[)%\d])[.,]\s(?=\D)/u)
