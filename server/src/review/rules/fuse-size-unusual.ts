import { allFuseSizes, nextFuse } from '../../physics/fuses.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const fuseSizeUnusual = reviewRule({
  id: 'fuse-size-unusual',
  severity: 'information',
  reason: 'Fuses come in standard sizes.',
  source: 'NEC 240.6(A) (as quoted by two commentaries); IEC 60269 and ISO 8820 sizes (from memory)',
  messages: {
    theNextIs: '; the next is {next} A',
    unusual: '{fuse} is no standard fuse size{part}',
  },

  check({ system }) {
    const fuses = [system.battery.fuse, ...system.arrays.map((array) => array.string_fuse)]
    return fuses.flatMap((fuse) => {
      if (!fuse || fuse.value <= 0 || allFuseSizes.includes(fuse.value)) return []
      const next = nextFuse(allFuseSizes, fuse.value)
      return [
        {
          say: 'unusual',
          with: { fuse: said(fuse), part: next ? { say: 'theNextIs', with: { next } } : null },
          suspects: [fuse] as const,
        },
      ]
    })
  },
})
