import { inWords } from '../../server/src/findings/words.ts'
import { reasons } from '../../server/src/slips/typos/reasons.ts'
import type { SlipVerdict } from '../../server/src/slips/verdict.ts'

/** A verdict as it is kept: what is offered with its certainty, and the odds that there is a slip at all. */
export function inOneLine(verdict: SlipVerdict): string {
  if (verdict.kind === 'consistent') return 'consistent'
  const odds = verdict.odds.toFixed(2)
  if (verdict.kind === 'disagree') return `${verdict.pointers.join()} disagree, odds ${odds}`
  const others = verdict.alternatives.map(
    ({ pointer, text, certainty }) => `${pointer} ${text} ${certainty.toFixed(2)}`,
  )
  const { pointer, text, why, certainty, siblings, also = [] } = verdict
  const more = also.map((one) => ` and ${one.pointer} ${one.text}`).join('')
  const first = `${pointer} ${text}${more} (${inWords(why, reasons)}) ${certainty.toFixed(2)}, odds ${odds}, ${siblings.length} siblings`
  return [first, ...others].join(' | ')
}
