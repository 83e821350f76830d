import { short } from '../../rules/band.ts'
import { continuous, mainCurrent } from '../bank-current.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const eachFuseLow: ReviewRule = {
  id: 'each-fuse-low',
  severity: 'warning',
  reason: 'When the fuse of one battery opens, the others carry its share and theirs open next.',
  source: 'design current at most the fuse (IEC 60364-4-43, from memory)',

  check(system) {
    const { each_fuse: fuse, in_parallel: parallel } = system.system.battery
    const main = mainCurrent(system)
    if (!fuse || !main || !parallel || parallel.value < 2) return null
    const design = (continuous * main.amps) / parallel.value
    if (design <= fuse.value) return null
    return {
      message: `Each of ${parallel.text} batteries carries ${short(design)} A of the 1.25 x ${short(main.amps)} A, more than its fuse of ${said(fuse)}`,
      suspects: [fuse, parallel],
    }
  },
}
