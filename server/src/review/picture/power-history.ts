import { endingInWords } from '../measured/ending-in-words.ts'
import { measuredOf } from '../measured/measured.ts'
import { warrantedShare } from '../measured/warranted.ts'
import type { ResolvedSystem } from '../resolved.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { phraseInWords } from '../../wording/phrase.ts'

/** What is left of the power of one array by year, as shares of what the records expect. */
export interface PowerHistory {
  readonly id: string
  readonly points: readonly {
    readonly date: string
    readonly years: number
    readonly left: number
    readonly uncertainty: number
    readonly pointer: string
  }[]
  /** At the start and a year; null for one date. */
  readonly trend: { readonly start: number; readonly slope: number } | null
  /** What it comes to, in words. */
  readonly ending: string
  /** What the warranty promises: a share until an age, youngest first. */
  readonly warranted: readonly { readonly from: number; readonly until: number; readonly share: number }[]
  /** To which age the picture goes [years]. */
  readonly until: number
}

export function powerHistories(system: ResolvedSystem, bundle?: Bundle): readonly PowerHistory[] {
  return measuredOf(system).trends.map((trend) => {
    const { array, points, line } = trend
    const last = points.at(-1)!.years
    const until = Math.max(
      last + 1,
      ...stepsOf(array.panels.map(({ panel }) => panel?.record)).filter((age) => age <= last + 10),
    )
    return {
      id: array.entry.id?.value ?? '',
      points: points.map(({ date, years, left, uncertainty, strings }) => ({
        date,
        years,
        left,
        uncertainty,
        pointer: strings[0]?.string.measurement.entry.date?.pointer ?? '',
      })),
      trend: line && { start: line.start, slope: line.slope },
      ending: phraseInWords(endingInWords(trend), bundle),
      warranted: steps(
        until,
        (age) => warrantedShare(array, age),
        stepsOf(array.panels.map(({ panel }) => panel?.record)),
      ),
      until,
    }
  })
}

interface WithWarranty {
  readonly warranty: { readonly output: readonly { readonly years?: { readonly value: number } }[] }
}

/** Ages at which a step of a warranty ends. */
const stepsOf = (panels: readonly (WithWarranty | undefined)[]): readonly number[] =>
  [...new Set(panels.flatMap((panel) => panel?.warranty.output.flatMap(({ years }) => years?.value ?? []) ?? []))].sort(
    (a, b) => a - b,
  )

function steps(until: number, share: (age: number) => number | null, ends: readonly number[]) {
  let from = 0
  return ends.flatMap((end) => {
    const at = share(end)
    const step = at !== null && from < until ? [{ from, until: Math.min(end, until), share: at }] : []
    from = end
    return step
  })
}
