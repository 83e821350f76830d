import type { Said } from '../../findings/message.ts'
import type { Frame } from '../density/coherence.ts'
import { index } from '../evidence.ts'
import { likeTrueRecords, ofKind, type Candidate } from './candidate.ts'
import { reason } from './reasons.ts'

/** Published lists have 60 and 72 for each other and for what is between and beside; estimated, as are the odds of them. */
const isConfused = (typed: number, n: number) => [60, 72].includes(typed) && Math.abs(n - typed) <= 12
const ofGlass = [36, 48, 54, 60, 66, 72, 96]
const oddsAgainst = (typed: number, n: number) => (isConfused(typed, n) ? 3 : ofGlass.includes(typed) ? 0 : 1.5)
const rareOfGlass = [32, 33, 40, 44, 50, 55, 64, 78, 80, 84, 88, 108, 120, 128]
/** Any count that 12 V takes, and twice as many. How usual each is is left to the density. */
const ofFlexible = [...Array.from({ length: 25 }, (_, i) => 20 + i), 48, 60, 64, 66, 72]

/** Other counts of cells, where cells are counted alike. */
export function cellCounts({ values, counted, isGlass }: Frame): Candidate[] {
  if (!counted) return []
  const typed = values[index.cells]!
  const to = (n: number, why: Said, prior: number): Candidate => ({
    fields: [index.cells],
    values: [n],
    texts: [String(n)],
    why,
    prior,
  })
  const usual = (isGlass ? ofGlass : ofFlexible)
    .filter((n) => n !== typed)
    .map((n) =>
      to(
        n,
        reason({ say: 'usualCount' }),
        ofKind - Math.log(6) - (isGlass ? oddsAgainst(typed, n) : 1.5) - likeTrueRecords,
      ),
    )
  const rare = (isGlass ? rareOfGlass : [])
    .filter((n) => n !== typed)
    .map((n) => to(n, reason({ say: 'otherCount' }), ofKind - 8 - likeTrueRecords))
  const footnote = typed > 150 ? [to(Math.floor(typed / 10), reason({ say: 'digitAdded' }), ofKind)] : []
  // flexible panels of half-cells are few
  const half = typed % 2 === 0 ? [to(typed / 2, reason({ say: 'halfCells' }), ofKind - (isGlass ? 0.5 : 2.5))] : []
  return [...usual, ...rare, ...half, ...footnote]
}
