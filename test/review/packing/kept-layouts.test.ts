// Where panels lie on invented surfaces, kept so that it changes only on purpose: who has planned a roof finds the same plan after
// an update. `npx vitest run test/review/packing/kept-layouts.test.ts --update` writes them anew; none should hold fewer panels.
import { expect, test } from 'vitest'
import { random } from '../../../server/src/physics/random.ts'
import { packPanels } from '../../../server/src/review/packing/pack-panels.ts'
import type { SurfaceShape } from '../../../server/src/review/packing/surface.ts'
import { faults } from './layout.ts'

const panels = [
  [1.19, 0.54],
  [1.05, 0.54],
  [0.77, 0.67],
  [1.13, 0.98],
  [1.76, 1.13],
] as const

/** A surface of whole centimetres for so many panels or less, around keep-outs that leave most of it free. */
function surface(seed: number, [length, width]: readonly [number, number], most: number, count: number): SurfaceShape {
  let state = seed
  const between = (from: number, to: number) => {
    const next = random(state)
    state = next.state
    return Math.round(100 * (from + next.value * (to - from))) / 100
  }
  const area = most * length * width
  const long = between(1, 2.5) * Math.sqrt(area)
  const [l, w] = [Math.round(100 * long) / 100, Math.round((100 * area) / long) / 100]
  const keepOut = Array.from({ length: count }, () => ({
    x: between(0, l - 0.3),
    y: between(0, w - 0.3),
    length: between(0.1, 0.7),
    width: between(0.1, 0.7),
  }))
  return { length: l, width: w, gap: between(0, 0.02), keepOut }
}

const cm = (metres: number) => Math.round(100 * metres)

const inLine = ({ length, width, gap, keepOut }: SurfaceShape) =>
  [
    `${cm(length)} x ${cm(width)} cm, gap ${cm(gap)} cm`,
    ...keepOut.map(({ x, y, length: l, width: w }) => `without ${cm(l)} x ${cm(w)} at ${cm(x)} ${cm(y)}`),
  ].join(', ')

test.each([
  { what: 'clear surfaces', count: 0, sizes: [4, 9, 15, 24, 40] },
  { what: 'one keep-out', count: 1, sizes: [4, 7, 11, 16, 24] },
  { what: 'a few keep-outs', count: 3, sizes: [5, 9, 13, 20, 30] },
  { what: 'many keep-outs', count: 7, sizes: [8, 14, 22, 32, 48] },
])('$what', async ({ what, count, sizes }) => {
  const lines = panels.flatMap((panel, i) =>
    sizes.flatMap((most) => {
      const shape = surface(1000 * most + 10 * count + i, panel, most, count)
      const { laid, proven } = packPanels(shape, { length: panel[0], width: panel[1] })
      expect(faults(shape, panel, laid)).toEqual([])
      return [
        `${cm(panel[0])} x ${cm(panel[1])} on ${inLine(shape)}`,
        `  ${laid.length}${proven ? ', proven' : ''}: ${laid.map(({ x_m: x, y_m: y, turned }) => `${cm(x)} ${cm(y)}${turned ? ' across' : ''}`).join(', ')}`,
      ]
    }),
  )
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`layouts/${what.replaceAll(' ', '-')}.txt`)
})
