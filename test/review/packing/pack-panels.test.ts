import { expect, test } from 'vitest'
import { packPanels } from '../../../server/src/review/packing/pack-panels.ts'

const shape = (
  length: number,
  width: number,
  keepOut: { x: number; y: number; length: number; width: number }[] = [],
  gap = 0,
) => {
  return { length, width, keepOut, gap }
}

test.each([
  { name: 'one that just fits', on: shape(1.19, 0.54), panel: [1.19, 0.54], most: 1 },
  { name: 'a hair too long', on: shape(1.189, 0.54), panel: [1.19, 0.54], most: 0 },
  { name: 'turned', on: shape(0.54, 1.19), panel: [1.19, 0.54], most: 1 },
  {
    name: 'a pinwheel of four around a hole, where rows hold two',
    on: shape(3, 3, [{ x: 1, y: 1, length: 1, width: 1 }]),
    panel: [2, 1],
    most: 4,
  },
  {
    name: 'five two by one on three by four less a corner',
    on: shape(4, 3, [{ x: 3, y: 2, length: 1, width: 1 }]),
    panel: [2, 1],
    most: 5,
  },
  {
    name: 'a keep-out narrower than the gap, on both sides of which a panel would lie too near the other',
    on: shape(2.01, 1, [{ x: 1, y: 0, length: 0.01, width: 1 }], 0.05),
    panel: [1, 1],
    most: 1,
  },
  {
    name: 'a keep-out narrower than the gap, and room for the gap',
    on: shape(2.05, 1, [{ x: 1, y: 0, length: 0.01, width: 1 }], 0.05),
    panel: [1, 1],
    most: 2,
  },
  { name: 'a gap that costs one', on: shape(2.0, 1, [], 0.01), panel: [1, 1], most: 1 },
  {
    name: 'a hatch in the middle of a coachroof',
    on: shape(3.2, 1.8, [{ x: 1.2, y: 0.6, length: 0.6, width: 0.6 }]),
    panel: [1.19, 0.54],
    most: 6,
  },
])('$name', ({ on, panel: [length, width], most }) => {
  const { laid, proven } = packPanels(on, { length: length!, width: width! })
  expect({ places: laid.length, proven }).toEqual({ places: most, proven: true })
})

test('of thousands, as when a size is typed in the wrong unit, a layout is found that need not be the best', () => {
  const { laid, proven } = packPanels(shape(2.6, 1.7), { length: 0.0105, width: 0.0056 })
  expect([laid.length > 5000, proven]).toEqual([true, false])
})

/** Tiles of whole centimetres, tried one by one in every cell: slow and plain. */
function everyWay(
  length: number,
  width: number,
  blocked: ReadonlySet<number>,
  panel: readonly [number, number],
  from = 0,
): number {
  let best = 0
  for (let cell = from; cell < length * width; cell++)
    for (const [l, w] of new Set([panel, [panel[1], panel[0]] as const])) {
      const [x, y] = [cell % length, Math.floor(cell / length)]
      if (x + l > length || y + w > width) continue
      const cells = Array.from({ length: l * w }, (_, i) => (y + Math.floor(i / l)) * length + x + (i % l))
      if (cells.some((c) => blocked.has(c))) continue
      best = Math.max(best, 1 + everyWay(length, width, new Set([...blocked, ...cells]), panel, cell + 1))
    }
  return best
}

test.each([
  [5, 4, [2, 3], [6]],
  [5, 5, [3, 2], [12]],
  [6, 4, [3, 2], [0, 13]],
  [5, 3, [2, 1], [7, 8, 14]],
  [4, 4, [3, 1], [5]],
] as const)(
  'on %i by %i cells the most of %j around %j is what trying every way gives',
  (length, width, panel, blocked) => {
    const keepOut = blocked.map((cell) => ({ x: cell % length, y: Math.floor(cell / length), length: 1, width: 1 }))
    const { laid, proven } = packPanels(shape(length, width, keepOut), { length: panel[0], width: panel[1] })
    expect(proven).toBe(true)
    expect(laid.length).toBe(everyWay(length, width, new Set(blocked), panel))
  },
)
