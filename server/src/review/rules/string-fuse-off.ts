import { short } from '../../rules/band.ts'
import { fuseSizes, nextFuse, stringFuseWindow } from '../../physics/fuses.ts'
import { lowest } from '../lowest.ts'
import { elsewhere } from '../rule.ts'
import { stringIsc } from '../strings.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const stringFuseOff: ReviewRule = {
  id: 'string-fuse-off',
  severity: 'warning',
  reason: 'Too small a string fuse blows in bright sun; too large a one lets the panel burn first.',
  source:
    'IEC 62548 practice: 1.5 Isc to 2.4 Isc and at most the panel’s maximum series fuse (as quoted by a worked example); NEC 690.9, at least 1.56 Isc (as quoted by trade articles); `practice` in wattproof.yaml chooses one',

  check(system) {
    return system.arrays.flatMap((array) => {
      const fuse = array.entry.string_fuse
      const isc = stringIsc(array)
      if (!fuse || isc === null) return []
      const limit = lowest(array.panels.map(({ panel }) => panel?.record.limits.series_fuse))
      const { low, high } = stringFuseWindow(isc, limit?.value ?? Infinity, system.practice)
      if (low <= fuse.value && fuse.value <= high) return []
      const blows = system.practice === 'NEC' ? low : 1.5 * isc
      const size = nextFuse(fuseSizes.string, low)
      const fits = size !== null && size <= high
      const big = high < fuse.value
      const why = big
        ? limit && limit.value < fuse.value
          ? `exceeds the panel's maximum series fuse of ${said(limit)}`
          : `is more than 2.4 times the string's Isc of ${short(isc)} A`
        : fuse.value < blows
          ? `is less than ${short(blows / isc)} times the string's Isc of ${short(isc)} A and will blow in bright sun`
          : `is less than the 1.56 times Isc of US practice, ${short(low)} A`
      return [
        {
          message: `The string fuse ${said(fuse)} ${why}`,
          suspects: [fuse] as const,
          severity: big ? ('error' as const) : fuse.value < blows ? ('warning' as const) : ('information' as const),
          ...elsewhere(array.panels[0]?.panel, limit),
          ...(fits && {
            correction: {
              field: fuse,
              text: `${size} A`,
              why: `between ${short(low)} and ${short(high)} A`,
              certainty: 'guess' as const,
            },
          }),
        },
      ]
    })
  },
}
