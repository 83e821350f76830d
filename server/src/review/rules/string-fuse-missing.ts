import { figure } from '../../findings/message.ts'
import { fuseSizes, nextFuse, reverseCurrent, stringFuseWindow } from '../../physics/fuses.ts'
import { lowest } from '../lowest.ts'
import { elsewhere } from '../rule.ts'
import { stringIsc } from '../strings.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const stringFuseMissing = reviewRule({
  id: 'string-fuse-missing',
  severity: 'error',
  reason:
    'When one string fails, the others drive their current back through it; above its fuse rating the panel can burn.',
  source: 'IEC 62548 practice (as quoted by a worked example), with 1.25 for bright sun of US practice',
  messages: {
    panel: 'a panel rated for {limit}',
    string: 'one string',
    threeAndMore: '; three strings and more are usually fused',
    aStringFuse: '; fit {size} A in each string',
    noFuseSuits: '; no fuse suits these panels, so give each string a controller of its own',
    missing: '{back} can flow back into {what}{usually}{fix}',
  },

  check(system) {
    return system.arrays.flatMap((array) => {
      const { string_fuse: fuse, wiring } = array.entry
      const strings = wiring.in_parallel
      const isc = stringIsc(array)
      if (fuse || !strings || strings.value < 2 || isc === null) return []
      const limit = lowest(array.panels.map(({ panel }) => panel?.record.limits.series_fuse))
      const back = reverseCurrent(strings.value, isc)
      if (strings.value < 3 && !(limit && limit.value < back)) return []
      const window = stringFuseWindow(isc, limit?.value ?? Infinity, system.practice)
      const size = nextFuse(fuseSizes.string, window.low)
      const fix = size !== null && size <= window.high ? { say: 'aStringFuse', with: { size } } : { say: 'noFuseSuits' }
      const isWithin = limit && back <= limit.value
      return [
        {
          say: 'missing',
          with: {
            back: figure(back, 'A'),
            what: limit ? { say: 'panel', with: { limit: said(limit) } } : { say: 'string' },
            usually: isWithin ? { say: 'threeAndMore' } : null,
            fix,
          },
          suspects: [strings],
          severity: isWithin ? ('warning' as const) : ('error' as const),
          ...elsewhere(array.panels[0]?.panel, limit),
        },
      ]
    })
  },
})
