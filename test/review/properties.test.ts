import fc from 'fast-check'
import { expect, test } from 'vitest'
import { figuresOf } from '../../server/src/review/figures-of.ts'
import { packPanels } from '../../server/src/review/packing/pack-panels.ts'
import { example, seeking, switching } from './example.ts'

const total = (months: readonly { yield_wh_day: number }[]) => months.reduce((sum, m) => sum + m.yield_wh_day, 0)

test('one more panel never lowers the yield of any month', () => {
  let before = example({ count: 1, cable: 50 })
  for (let count = 2; count <= 6; count++) {
    const next = example({ count, cable: 50 })
    const [a, b] = [figuresOf(before).months, figuresOf(next).months]
    b.forEach((month, i) => expect(month.yield_wh_day).toBeGreaterThan(a[i]!.yield_wh_day))
    before = next
  }
})

test.each([
  ['the maximum power point', seeking],
  ['battery voltage', switching],
])('one more string never lowers the yield of any month, at %s', (_, controller) => {
  const all = [1, 2, 3].map((strings) => figuresOf(example({ count: 1, strings, cable: 50, controller })).months)
  all
    .slice(1)
    .forEach((months, i) =>
      months.forEach((month, m) => expect(month.yield_wh_day).toBeGreaterThan(all[i]![m]!.yield_wh_day)),
    )
})

test('a switching controller never gives more than one that seeks the maximum power point', () => {
  const [best, held] = [seeking, switching].map(
    (controller) => figuresOf(example({ count: 1, cable: 50, controller })).months,
  )
  held!.forEach((month, m) => expect(month.yield_wh_day / 0.99).toBeLessThan(best![m]!.yield_wh_day / 0.97))
})

test('a thicker cable never raises the drop, nor lowers the yield', () => {
  const sizes = [0.75, 1, 1.5, 2, 2.5, 3, 4, 6, 8, 10, 16, 25, 35, 50, 70, 95, 120]
  const all = sizes.map((cable) => figuresOf({ ...example({ cable }), years: 1 }))
  all.slice(1).forEach((figures, i) => {
    const [thin, thick] = [all[i]!, figures]
    expect(thick.arrays[0]!.cable!.drop_pct!).toBeLessThan(thin.arrays[0]!.cable!.drop_pct!)
    expect(total(thick.months)).toBeGreaterThanOrEqual(total(thin.months))
  })
})

test('colder never lowers the voltage', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -60, max: 40, noNaN: true }),
      fc.double({ min: 0, max: 40, noNaN: true }),
      (air, by) => {
        const cold = (coldest: number) =>
          figuresOf({ ...example({ coldest: Number(coldest.toFixed(3)) }), years: 1 }).arrays[0]!.voc_cold_v!
        expect(cold(air - by)).toBeGreaterThanOrEqual(cold(air))
      },
    ),
    { numRuns: 60 },
  )
})

const metre = (most: number) => fc.integer({ min: 20, max: most * 100 }).map((cm) => cm / 100)
const keepOut = fc.record({ x: metre(3), y: metre(2), length: metre(1), width: metre(1) })
const surface = fc.record({
  length: metre(4),
  width: metre(2),
  keepOut: fc.array(keepOut, { maxLength: 2 }),
  gap: fc.constantFrom(0, 0.02),
})
const size = fc.record({ length: metre(2), width: metre(1) })

/** A tenth of a millimetre over the edge counts as on it [m]; the rest is that of sums of binary fractions. */
const tolerance = 1e-4 + 1e-9

test('panels lie on the surface, beside its keep-outs and beside each other', () => {
  fc.assert(
    fc.property(surface, size, (shape, panel) => {
      const boxes = packPanels(shape, panel).laid.map(({ x_m: x, y_m: y, turned }) => ({
        x,
        y,
        length: turned ? panel.width : panel.length,
        width: turned ? panel.length : panel.width,
      }))
      boxes.forEach((box, i) => {
        expect(box.x + box.length).toBeLessThanOrEqual(shape.length + tolerance)
        expect(box.y + box.width).toBeLessThanOrEqual(shape.width + tolerance)
        for (const other of shape.keepOut) expect(apart(box, other, 0)).toBe(true)
        for (const other of boxes.slice(i + 1)) expect(apart(box, other, shape.gap)).toBe(true)
      })
    }),
    { numRuns: 200 },
  )
})

test('a larger surface, or no keep-outs, never holds fewer', () => {
  fc.assert(
    fc.property(surface, size, metre(1), (shape, panel, more) => {
      const [small, large] = [packPanels(shape, panel), packPanels({ ...shape, length: shape.length + more }, panel)]
      const free = packPanels({ ...shape, keepOut: [] }, panel)
      if (large.proven) expect(large.laid.length).toBeGreaterThanOrEqual(small.laid.length)
      if (free.proven) expect(free.laid.length).toBeGreaterThanOrEqual(small.laid.length)
    }),
    { numRuns: 200 },
  )
})

type Box = { x: number; y: number; length: number; width: number }
const apart = (a: Box, b: Box, gap: number) => {
  const e = 1e-6
  const along = (p: number, l: number, q: number) => p + l + gap <= q + e
  return along(a.x, a.length, b.x) || along(b.x, b.length, a.x) || along(a.y, a.width, b.y) || along(b.y, b.width, a.y)
}
