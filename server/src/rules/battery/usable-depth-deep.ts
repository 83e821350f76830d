import { percent } from '../../findings/message.ts'
import { chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const usableDepthDeep = batteryRule({
  id: 'usable-depth-deep',
  severity: 'warning',
  reason: 'Lead-acid that is emptied beyond what it is made for every day lasts a season.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    deep: 'A usable depth of {depth} is more than the {deepest} that {name} is made for',
  },

  check({ chemistry, usable_depth: depth }) {
    if (!chemistry || !depth) return null
    const { name, deepest } = chemistries[chemistry.value]
    if (depth.value <= deepest) return null
    return {
      say: 'deep',
      with: { depth, name, deepest: percent(deepest) },
      suspects: [depth, chemistry],
      severity: 1 < depth.value ? 'error' : 'warning',
    }
  },
})
