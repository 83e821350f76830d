import { expect, test } from 'vitest'
import { shapeOf } from '../../../server/src/review/fit.ts'
import { packPanels } from '../../../server/src/review/packing/pack-panels.ts'
import type { SurfaceShape } from '../../../server/src/review/packing/surface.ts'
import { random } from '../../../server/src/physics/random.ts'
import { faults } from './layout.ts'

/**
 * The most panels on a surface of whole decimetres, by trying every cell: the first cell that is not decided on yet is the corner of a
 * panel, either way round, or of none. Whole sides can lie at whole places.
 */
function tryingEveryCell(
  [length, width]: readonly [number, number],
  [l, w]: readonly [number, number],
  gap: number,
  isBlocked: (x: number, y: number) => boolean,
): number {
  const known = new Map<string, number>()
  const taken = Array.from({ length: length * width }, () => 0)
  return from(0)

  function from(cell: number): number {
    if (cell === length * width) return 0
    const key = `${cell} ${taken.slice(cell).join('')}`
    const before = known.get(key)
    if (before !== undefined) return before
    let best = from(cell + 1)
    const [x, y] = [cell % length, Math.floor(cell / length)]
    for (const [dx, dy] of [
      [l, w],
      [w, l],
    ] as const) {
      // prettier-ignore
      if (x + dx > length || y + dy > width) continue
      // the panel must be on free cells; it and the gap behind it share no cell with another and its gap
      const own = cellsOf(x, y, dx, dy)
      const spread = cellsOf(x, y, Math.min(dx + gap, length - x), Math.min(dy + gap, width - y))
      if (own.some((c) => isBlocked(c % length, Math.floor(c / length))) || spread.some((c) => taken[c])) continue
      for (const c of spread) taken[c] = 1
      best = Math.max(best, 1 + from(cell + 1))
      for (const c of spread) taken[c] = 0
    }
    known.set(key, best)
    return best
  }

  function cellsOf(x: number, y: number, dx: number, dy: number): number[] {
    return Array.from({ length: dx * dy }, (_, i) => (y + Math.floor(i / dx)) * length + x + (i % dx))
  }
}

let state = 20_261_127
function int(from: number, to: number): number {
  const next = random(state)
  state = next.state
  return from + Math.floor(next.value * (to - from + 1))
}

test('on 500 small surfaces, with keep-outs, gap and walkway, as many as by trying every cell', () => {
  const tally = { proven: 0, withGap: 0, withWalkway: 0 }
  for (let i = 0; i < 500; i++) {
    const [length, width] = [int(3, 8), int(2, 5)]
    const panel = [int(2, 4), int(1, 3)] as const
    // also wider than a keep-out
    const gap = int(0, 3) === 0 ? int(1, 2) : 0
    const strip = int(0, 4) === 0 ? 1 : 0
    const keepOut = Array.from({ length: int(0, 3) }, () => ({ x: int(0, length - 1), y: int(0, width - 1), l: int(1, 2), w: int(1, 2) })) // prettier-ignore
    const field = <T>(value: T) => ({ value, text: String(value), pointer: '', span: { start: 0, end: 0 } })
    const shape = shapeOf({
      size: { length: field(length / 10), width: field(width / 10) },
      gap: field(gap / 10),
      keep_out: keepOut.map(({ x, y, l, w }) => ({ x: field(x / 10), y: field(y / 10), length: field(l / 10), width: field(w / 10) })), // prettier-ignore
      walkway: strip ? { side: field('length'), width: field(strip / 10) } : {},
    } as never) as SurfaceShape
    const isBlocked = (x: number, y: number) =>
      y < strip || keepOut.some((k) => k.x <= x && x < k.x + k.l && k.y <= y && y < k.y + k.w)
    const most = tryingEveryCell([length, width], panel, gap, isBlocked)
    const { laid, proven } = packPanels(shape, { length: panel[0] / 10, width: panel[1] / 10 })
    const task = JSON.stringify({ length, width, panel, gap, strip, keepOut })
    expect(faults(shape, [panel[0] / 10, panel[1] / 10], laid), task).toEqual([])
    expect(laid.length, task).toBe(most)
    tally.proven += Number(proven)
    tally.withGap += Number(gap > 0)
    tally.withWalkway += strip
  }
  expect(tally.proven).toBeGreaterThan(400)
  expect(Math.min(tally.withGap, tally.withWalkway)).toBeGreaterThan(50)
}, 60_000)
