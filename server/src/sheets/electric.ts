import type { Fit } from './fits/fit.ts'
import type { Placed } from './models.ts'

export const ratings = ['pmax', 'vmp', 'imp', 'voc', 'isc'] as const
export type Rating = (typeof ratings)[number]

export interface Choice {
  readonly from: Placed
  readonly fit: Fit
}

export type Ratings = Readonly<Partial<Record<Rating, Choice>>>

/**
 * Which printed values are the five ratings of one condition. Labels that are known weigh; where they say nothing the
 * curve does: Voc > Vmp, Isc > Imp and Vmp x Imp = Pmax. A rating that could as well be another value is left out.
 */
export function ratingsAmong(pool: readonly Placed[]): Ratings {
  const options = ratings.map((field) => {
    const all = pool.flatMap((from) => from.fits.filter((f) => f.field === field).map((fit) => ({ from, fit })))
    const distinct = all.filter(
      (c, i) => all.findIndex((o) => o.fit.value === c.fit.value && o.fit.named >= c.fit.named) === i,
    )
    return [...distinct.sort((a, b) => b.fit.named - a.fit.named).slice(0, 6), null]
  })
  let best: { score: number; picks: readonly (Choice | null)[] } = { score: -1, picks: [] }
  const second = ratings.map(() => -1)
  const all: { score: number; picks: readonly (Choice | null)[] }[] = []
  for (const picks of products(options)) {
    const cells = picks.flatMap((p) => (p ? [p.from.cell] : []))
    if (new Set(cells).size < cells.length) continue
    const score = picks.reduce((sum, p) => sum + (p ? p.fit.named + 0.6 : 0), 0) + together(cells) + physics(picks)
    all.push({ score, picks })
    if (score > best.score) best = { score, picks }
  }
  for (const { score, picks } of all)
    picks.forEach((p, i) => {
      if (p && p.fit.value !== best.picks[i]?.fit.value && score > second[i]!) second[i] = score
    })
  const made = Object.fromEntries(
    best.picks.flatMap((p, i) => (p && best.score - second[i]! >= 0.9 ? [[ratings[i]!, p]] : [])),
  )
  return certain(made)
}

function* products<T>(options: readonly (readonly T[])[], done: readonly T[] = []): Generator<readonly T[]> {
  const next = options[done.length]
  if (!next) return yield done
  for (const one of next) yield* products(options, [...done, one])
}

const together = (cells: readonly { readonly table: number }[]): number =>
  0.3 * Math.max(0, ...cells.map(({ table }) => cells.filter((c) => c.table === table).length))

function physics(picks: readonly (Choice | null)[]): number {
  const [p, v, i, voc, isc] = picks.map((pick) => pick?.fit.value)
  const product = p && v && i ? Math.abs((v * i) / p - 1) : null
  const between = (a: number | undefined, b: number | undefined, low: number, high: number) =>
    a && b ? (low < a / b && a / b < high ? 1 : -6) : 0
  return (
    (product === null ? 0 : product < 0.015 ? 3 : product < 0.04 ? 0.5 : -5) +
    // from full cells to thin film, common practice, no source
    between(voc, v, 1.05, 1.65) +
    between(isc, i, 1, 1.5)
  )
}

/** A value whose label says nothing counts only where the product of three holds. */
function certain(made: Ratings): Ratings {
  const { pmax, vmp, imp } = made
  const holds = pmax && vmp && imp ? Math.abs((vmp.fit.value * imp.fit.value) / pmax.fit.value - 1) < 0.02 : false
  return Object.fromEntries(Object.entries(made).filter(([, c]) => c.fit.named >= 2 || holds))
}
