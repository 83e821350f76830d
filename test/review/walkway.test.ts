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

// what is laid first keeps the gap to all sides, and no more: the next lies beside and above it, either way round
test.each([
  { size: 'length: 1.02 m, width: 1.02 m', gap: '20 mm', laid: [1, 1] },
  { size: 'length: 1.01 m, width: 1.02 m', gap: '20 mm', laid: [1, 1] },
  { size: 'length: 1.02 m, width: 1.01 m', gap: '20 mm', laid: [1, 1] },
  { size: 'length: 1.01 m, width: 1.01 m', gap: '20 mm', laid: [1, 0] },
  { size: 'length: 1.52 m, width: 0.5 m', gap: '20 mm', laid: [1, 1] },
  { size: 'length: 0.5 m, width: 1.52 m', gap: '20 mm', laid: [1, 1] },
])('of two kinds $laid lie on $size with a gap of $gap', ({ size, gap, laid }) => {
  const other = panel.replace('length: 1 m', 'length: 0.5 m')
  const shape = size.includes('1.5') ? other : panel.replace('width: 0.5 m', 'width: 0.499 m')
  const system = resolved(`
surfaces: [{ id: roof, size: { ${size} }, gap: ${gap} }]
arrays: [{ panels: [{ panel: ${panel}, count: 1, surface: roof }, { panel: ${shape}, count: 1, surface: roof }] }]`)
  expect(layOut(system, system.system.surfaces[0]!).map((one) => one.laid.length)).toEqual(laid)
})
