import { expect, test } from 'vitest'
import { layOut } from '../../server/src/review/fit.ts'
import { resolved } from './resolved.ts'

const panel = `{ stc: { pmax: 50 W, vmp: 18 V, imp: 2.8 A, voc: 22 V, isc: 3 A }, size: { length: 1 m, width: 0.5 m } }`

test.each([
  { walkway: '', most: 4 },
  { walkway: 'walkway: { side: length, width: 400 mm }', most: 2 },
  { walkway: 'walkway: { side: width, width: 400 mm }', most: 3 },
  { walkway: 'walkway: { side: length, width: 1 m }', most: 0 },
])('$most panels of 1 x 0.5 m on 2 x 1 m with "$walkway"', ({ walkway, most }) => {
  const system = resolved(`
surfaces: [{ id: roof, size: { length: 2 m, width: 1 m }${walkway && `, ${walkway}`} }]
arrays: [{ panels: [{ panel: ${panel}, count: 9, surface: roof }] }]`)
  expect(layOut(system, system.system.surfaces[0]!).map(({ laid }) => laid.length)).toEqual([most])
})
