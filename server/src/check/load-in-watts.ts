import type { Found } from '../findings/found.ts'
import { formatNumber } from '../quantities/format.ts'
import { readQuantity } from '../quantities/read.ts'
import { reading } from '../records/facts.ts'
import type { ReadFile } from '../records/read-file.ts'
import { bankOf } from '../review/bank.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import { phrase } from '../wording/phrase.ts'
import type { Review } from './review.ts'
import { whole } from './sentences.ts'

/**
 * What is found of a system with a load's `power: 5 A` as the power that it is at the battery. The current of a device on
 * alternating voltage is not that of the battery, so that there nothing is offered.
 */
export function withLoadsInWatts({ tree }: ReadFile, found: readonly Found[], review: Review | null): readonly Found[] {
  const voltage = review && bankOf(review.system)?.voltage
  if (!voltage) return found
  return found.map((one) => {
    if (one.rule.id !== reading.wrongDimension.id || !/^\/(?:loads|other_sources)\/\d+\/power$/.test(one.pointer))
      return one
    const typed = textAt(one.pointer)
    const amperes = readQuantity(typed, 'current').quantity?.value
    if (amperes === undefined) return one
    if (textAt(one.pointer.replace(/power$/, 'supply')) === 'ac') return { ...one, fixes: [] }
    const watts = `${formatNumber(amperes * voltage, 3)} W`
    const said = whole(phrase`${typed} is a current; a power belongs here (${watts} at ${formatNumber(voltage, 3)} V).`)
    return { ...one, claim: said, sentence: said }
  })

  function textAt(pointer: string): string {
    const node = nodeAtPointer(tree, pointer)
    return node?.kind === 'scalar' ? node.text : ''
  }
}
