import { figure } from '../../findings/message.ts'
import { continuous, mainCurrent } from '../bank-current.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const eachFuseLow = reviewRule({
  id: 'each-fuse-low',
  severity: 'warning',
  reason: 'When the fuse of one battery opens, the others carry its share and theirs open next.',
  source: 'design current at most the fuse (IEC 60364-4-43, from memory)',
  messages: {
    low: 'Each of {parallel} batteries carries {design} of the 1.25 x {amps}, more than its fuse of {fuse}',
  },

  check(system) {
    const { each_fuse: fuse, in_parallel: parallel } = system.system.battery
    const main = mainCurrent(system)
    if (!fuse || !main || !parallel || parallel.value < 2) return null
    const design = (continuous * main.amps) / parallel.value
    if (design <= fuse.value) return null
    return {
      say: 'low',
      with: { parallel, design: figure(design, 'A'), amps: figure(main.amps, 'A'), fuse: said(fuse) },
      suspects: [fuse, parallel],
    }
  },
})
