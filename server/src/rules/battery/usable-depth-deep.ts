import type { Battery } from '../../records/records.generated.ts'
import { chemistries } from '../chemistry.ts'
import { percent } from '../words.ts'
import type { Rule } from '../rule.ts'

export const usableDepthDeep: Rule<Battery> = {
  id: 'usable-depth-deep',
  severity: 'warning',
  reason: 'Lead-acid that is emptied every day lasts a season.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',

  check({ chemistry, usable_depth: depth }) {
    if (!chemistry || !depth) return null
    const { name, deepest } = chemistries[chemistry.value]
    if (depth.value <= deepest) return null
    return {
      message: `A usable depth of ${depth.text} is more than ${name} bears, ${percent(deepest)}`,
      suspects: [depth, chemistry],
      severity: 1 < depth.value ? 'error' : 'warning',
    }
  },
}
