import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { resolveSystem } from '../../server/src/check/resolve-system.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { yearOf, yieldOf } from '../../server/src/review/year.ts'

const folder = 'samples/systems'
const library = createLibrary()
for (const path of [
  'boat.system.yaml',
  'cabin.system.yaml',
  'van.system.yaml',
  'wattproof.yaml',
  'climates/example-bay.climate.yaml',
  'climates/example-valley.climate.yaml',
  'batteries/example-agm-220.battery.yaml',
  'batteries/example-lfp-100.battery.yaml',
  'batteries/example-lfp-50.battery.yaml',
  'controllers/example-mppt-30.controller.yaml',
  'controllers/example-mppt-60.controller.yaml',
  'controllers/example-pwm-20.controller.yaml',
  'panels/gannet-200.panel.yaml',
  'panels/grebe-430.panel.yaml',
  'panels/puffin-115.panel.yaml',
  'panels/skua-110.panel.yaml',
])
  library.put(path, readFileSync(`${folder}/${path}`, 'utf8'))

test.each(['boat', 'cabin', 'van'])(
  'the yield of %s alone is the yield of its whole year, whatever controller was looked at before',
  (name) => {
    const file = library.file(`${name}.system.yaml`) as ReadFile<'system'>
    const system = resolveSystem(library, file)
    const [array] = system.arrays
    const controllers = library.ofKind('controller', file.path)
    let compared = 0
    for (const { record } of library.ofKind('panel', file.path))
      for (const { record: own, path } of [...controllers, ...controllers]) {
        const hungry = { ...own, self_consumption: { ...own.self_consumption, value: 2 * (compared % 3) } }
        const panels = array!.panels.map((one) => ({ ...one, panel: { record, path: null } }))
        const controller = { record: hungry as typeof own, path }
        const alone = { ...system, arrays: [{ ...array!, panels, controller }] }
        expect(yieldOf(alone)).toEqual(yearOf({ ...alone })!.months.map((month) => month.yield_wh_day))
        compared++
      }
    expect(compared).toBe(24)
  },
)
