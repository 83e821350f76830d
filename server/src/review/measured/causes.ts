import { bypassDiodesOf } from '../bypass-diodes.ts'
import type { ResolvedArray, ResolvedPanels } from '../resolved.ts'

/** What is likeliest to have made a string give less than it should, as the review names it. */
export type Cause =
  'panel missing' | 'bypass diode conducting' | 'shade or dirt' | 'string of another array' | 'reversed' | 'aged'

export interface Diagnosis {
  readonly cause: Cause
  /** The string that it fits, where it is one of another array. */
  readonly fits?: Fits
}

/** A string of an array by its number from 1. */
export interface Fits {
  readonly array: ResolvedArray
  readonly number: number
}

/** How near a missing voltage must be to the share of a panel or of a diode [1], or so many times the uncertainty of the comparison (common practice, no source). */
const near = 0.02
const timesUncertain = 1.5

/**
 * What a missing share of Voc shows: a panel of a string takes its own share with it, a bypass diode that conducts that of its
 * cells, and a panel that is connected the other way round twice its share.
 *
 * @param lost         share of Voc that is missing, above 0
 * @param uncertainty  of that share
 */
export function causeOfVoltage(
  panels: readonly ResolvedPanels[],
  lost: number,
  uncertainty: number,
): 'panel missing' | 'bypass diode conducting' | 'reversed' | null {
  const all = panels.map(({ panel }) => panel?.record.stc.voc?.value ?? 0)
  const total = all.reduce((sum, voc) => sum + voc, 0)
  if (!(total > 0)) return null
  const guesses = panels.flatMap((one, i) => {
    const share = all[i]! / total
    const diodes = one.panel ? bypassDiodesOf(one.panel.record) : 1
    return [
      ...(panels.length > 1 ? [{ cause: 'panel missing' as const, share }] : []),
      ...Array.from({ length: diodes - 1 }, (_, j) => ({
        cause: 'bypass diode conducting' as const,
        share: (share * (j + 1)) / diodes,
      })),
      ...(panels.length > 1 ? [{ cause: 'reversed' as const, share: 2 * share }] : []),
    ]
  })
  const [best] = guesses.map((guess) => ({ ...guess, off: Math.abs(guess.share - lost) })).sort((a, b) => a.off - b.off)
  return best && best.off <= Math.max(near, timesUncertain * uncertainty) ? best.cause : null
}
