import type { Found } from '../findings/found.ts'
import { reading } from '../records/facts.ts'
import type { ReadFile } from '../records/read-file.ts'
import { amperesInWatts } from '../review/amperes-in-watts.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import { phrase } from '../wording/phrase.ts'
import type { Review } from './review.ts'
import { whole } from './sentences.ts'

/**
 * What is found of a system with a load's `power: 5 A` as the power that it is at the battery. The current of a device on
 * alternating voltage is not that of the battery, so that there nothing is offered.
 */
export function withLoadsInWatts({ tree }: ReadFile, found: readonly Found[], review: Review | null): readonly Found[] {
  return found.map((one) => {
    const isLoad = one.rule.id === reading.wrongDimension.id && /^\/loads\/\d+\/power$/.test(one.pointer)
    const typed = textAt(one.pointer)
    const meant = isLoad && review ? amperesInWatts(typed, review.system) : null
    if (!meant) return one
    if (textAt(one.pointer.replace(/power$/, 'supply')) === 'ac') return { ...one, fixes: [] }
    const said = whole(phrase`${typed} is a current; a power belongs here (${meant.power} at ${meant.voltage}).`)
    return { ...one, claim: said, sentence: said }
  })

  function textAt(pointer: string): string {
    const node = nodeAtPointer(tree, pointer)
    return node?.kind === 'scalar' ? node.text : ''
  }
}
