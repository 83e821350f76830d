import { expect, test } from 'vitest'
import { packPanels } from '../../../server/src/review/packing/pack-panels.ts'
import { faults } from './layout.ts'
import { published } from './published.ts'
import solved from './solved.json' with { type: 'json' }

const cm = 0.01

test.each(solved.surfaces)(
  'as many as a constraint solver found: $best of $panel_cm cm on $surface_cm cm around $keep_out_cm',
  ({ surface_cm: surface, panel_cm: panel, keep_out_cm: keepOut, best, bound, proven: isMost }) => {
    const shape = {
      length: surface[0]! * cm,
      width: surface[1]! * cm,
      gap: 0,
      keepOut: keepOut.map(([x, y, l, w]) => ({ x: x! * cm, y: y! * cm, length: l! * cm, width: w! * cm })),
    }
    const [length, width] = [panel[0]! * cm, panel[1]! * cm]
    const { laid } = packPanels(shape, { length, width })
    expect(faults(shape, [length, width], laid)).toEqual([])
    expect(laid.length).toBeGreaterThanOrEqual(best)
    expect(laid.length).toBeLessThanOrEqual(bound ?? Infinity)
    if (isMost) expect(laid).toHaveLength(best)
  },
)

test.each(published)('pallet loading: $most of $box on $pallet ($source)', ({ pallet, box, most }) => {
  const shape = { length: pallet[0] * 0.1, width: pallet[1] * 0.1, gap: 0, keepOut: [] }
  const panel = [box[0] * 0.1, box[1] * 0.1] as const
  const { laid, proven } = packPanels(shape, { length: panel[0], width: panel[1] })
  expect(faults(shape, panel, laid)).toEqual([])
  expect(laid).toHaveLength(most)
  expect(proven).toBe(true)
})
