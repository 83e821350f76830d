import { allFuseSizes, nextFuse } from '../../physics/fuses.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const fuseSizeUnusual: ReviewRule = {
  id: 'fuse-size-unusual',
  severity: 'information',
  reason: 'Fuses come in standard sizes.',
  source: 'NEC 240.6(A) (as quoted by two commentaries); IEC 60269 and ISO 8820 sizes (from memory)',

  check({ system }) {
    const fuses = [system.battery.fuse, ...system.arrays.map((array) => array.string_fuse)]
    return fuses.flatMap((fuse) => {
      if (!fuse || fuse.value <= 0 || allFuseSizes.includes(fuse.value)) return []
      const next = nextFuse(allFuseSizes, fuse.value)
      return [
        {
          message: `${said(fuse)} is no standard fuse size${next ? `; the next is ${next} A` : ''}`,
          suspects: [fuse] as const,
        },
      ]
    })
  },
}
