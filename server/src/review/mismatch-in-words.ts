import { sayFrom, type Catalogue, type Said } from '../findings/message.ts'
import type { Proposal } from '../findings/rule.ts'
import type { Field } from '../records/field.ts'
import { bankOf } from './bank.ts'
import { bestWiring, type Better } from './best-wiring.ts'
import { mismatchOf } from './mismatch.ts'
import type { ResolvedArray, ResolvedPanels, ResolvedSystem } from './resolved.ts'
import { roughPercent } from './rough.ts'

export const mismatchPhrases = {
  id: 'mismatch',
  messages: {
    now: '{series}S{parallel}P loses {loss} of the year',
    listed: '{series}S{parallel}P in list order loses {loss} of the year',
    and: '{now}; {wiring}',
    sorted: 'like panels together, {series}S{parallel}P loses {loss}',
    inOrder: '{series}S{parallel}P loses {loss}',
  },
} as const satisfies Catalogue

const say = sayFrom(mismatchPhrases)

/** What an array of unlike panels or planes loses in the year, for a message; null where it is not known. */
export interface Lost {
  /** [1] */
  readonly share: number
  /** Such as `2S2P loses 19 % of the year; like panels together, 2S2P loses 0.1 %`. */
  readonly said: Said
  readonly proposal: Proposal | null
}

/** Only where much is lost is another wiring looked for. */
const much = 0.01

export function lostIn(system: ResolvedSystem, array: ResolvedArray): Lost | null {
  const bank = bankOf(system)
  const loss = mismatchOf(system, array, bank)?.loss
  if (loss === undefined) return null
  const { in_series: series, in_parallel: parallel } = array.entry.wiring
  const now = say({
    // of one string, or of single panels side by side, the order makes no difference
    say: (series?.value ?? 1) > 1 && (parallel?.value ?? 1) > 1 ? 'listed' : 'now',
    with: { series: series ?? 1, parallel: parallel ?? 1, loss: roughPercent(loss) },
  })
  const better = loss > much ? bestWiring(system, array, bank, loss) : null
  if (!better) return { share: loss, said: now, proposal: null }
  const wiring = say({
    say: better.isOrderOther ? 'sorted' : 'inOrder',
    with: { series: better.series, parallel: better.parallel, loss: roughPercent(Math.max(0, better.loss)) },
  })
  const proposal = proposalOf(array, better, wiring)
  // the fix is shown after the message anyway
  return { share: loss, said: proposal ? now : say({ say: 'and', with: { now, wiring } }), proposal }
}

/** Numbers of the wiring, and the entries of the list in another order where all of them name a record. */
function proposalOf(
  { entry }: ResolvedArray,
  { series, parallel, order, isOrderOther }: Better,
  why: Said,
): Proposal | null {
  const { in_series: inSeries, in_parallel: inParallel } = entry.wiring
  if (!inSeries || !inParallel) return null
  const numbers = [
    ...(series === inSeries.value ? [] : [{ field: inSeries, text: String(series) }]),
    ...(parallel === inParallel.value ? [] : [{ field: inParallel, text: String(parallel) }]),
  ]
  const moved = isOrderOther ? movedIn(entry, order) : []
  const [first, ...also] = moved ? [...moved, ...numbers] : []
  if (!first) return null
  return {
    ...first,
    why,
    certainty: 'guess',
    ...(also.length > 0 && { also }),
  }
}

type Change = { readonly field: Field<unknown>; readonly text: string }

/** What the entries of the list must read for the panels to stand in another order; null where one is written in place. */
function movedIn({ panels }: ResolvedArray['entry'], order: readonly ResolvedPanels[]): readonly Change[] | null {
  const kinds = [...new Set(order)].map(({ entry }) => entry)
  const changes = panels.map((entry, i) => ({ entry, next: kinds[i]! })).filter(({ entry, next }) => entry !== next)
  const each = changes.map(({ entry, next }) => {
    const pairs = [
      [entry.panel.id, next.panel.id],
      [entry.count, next.count],
      [entry.surface, next.surface],
    ] as const
    if (!entry.panel.id || !next.panel.id || !entry.surface !== !next.surface) return null
    return pairs.flatMap(([field, other]) =>
      field && other && field.text !== other.text ? [{ field, text: other.text }] : [],
    )
  })
  return each.includes(null) ? null : each.flatMap((some) => some ?? [])
}
