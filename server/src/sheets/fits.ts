import { conceptsIn, conditionIn, type Concept } from '../records/concepts.ts'
import { coefficients } from './fits/coefficients.ts'
import { electric } from './fits/electric.ts'
import { others } from './fits/others.ts'
import { percents } from './fits/percents.ts'
import { sizes } from './fits/sizes.ts'
import { temperatures } from './fits/temperatures.ts'
import type { Asked, Fit } from './fits/fit.ts'
import { numbersIn, unitAlone, unitInLabel, type Decimal } from './numbers.ts'
import type { Cell } from './tables.ts'

/** One printed cell with the fields that it may be the value of. */
export interface Candidate {
  readonly cell: Cell
  readonly says: ReadonlySet<Concept>
  readonly fits: readonly Fit[]
}

export function candidateOf(cell: Cell, decimal: Decimal): Candidate {
  const words = `${cell.label} ${cell.heads.join(' ')}`
  const says = conceptsIn(words)
  const heading = conceptsIn(cell.heading)
  const hint = unitInLabel(cell.label) ?? cell.unit ?? headUnits(cell.heads).at(-1) ?? null
  const numbers = numbersIn(cell.text, decimal)
  // words about the rear side over both conditions praise the panel; over ratings alone they are what it adds
  const isPraise = cell.heads.some((head) => conditionIn(head) !== null) && !conceptsIn(cell.label).has('rear')
  const rear = (says.has('rear') && !isPraise) || heading.has('rear') || [cell.label, ...cell.heads].some(isShare)
  const lure = says.has('pallet') || heading.has('pallet') || rear
  // heads of two columns in one: which of them is this one's is unclear
  const ambiguous = new Set(headUnits(cell.heads)).size > 1
  const fits =
    numbers.length === 0 || lure || ambiguous
      ? []
      : kinds.flatMap((kind) => kind({ cell, words, says, heading, hint, numbers }))
  return { cell, says, fits: fits.filter((fit) => fit.named > -3) }
}

/** Units of the heads of a column; `W` above `mm` is the width. */
function headUnits(heads: readonly string[]): readonly string[] {
  const units = heads.flatMap((head) => unitAlone(head) ?? unitInLabel(head) ?? [])
  return units.some((unit) => /^(?:mm|cm|m|in)$/.test(unit)) ? units.filter((unit) => unit !== 'W') : units
}

/** A column headed in per cent is a gain of the rear side. */
const isShare = (head: string) => /^[+~]?\s?\d+(?:[.,]\d+)?\s?%/.test(head.trim())

const kinds: readonly ((asked: Asked) => readonly Fit[])[] = [
  electric,
  percents,
  coefficients,
  temperatures,
  sizes,
  others,
]
