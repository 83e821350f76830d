import fc from 'fast-check'
import { expect, test } from 'vitest'
import { lambertWOfExp } from '../../server/src/physics/lambert-w.ts'
import { curve, currentAt, maxPower, openCircuit, voltageAt } from '../../server/src/physics/single-diode.ts'
import { shortCircuit } from './models/short-circuit.ts'

const diodes = fc.record({
  il: fc.double({ min: 0.01, max: 20, noNaN: true }),
  i0: fc.double({ min: -13, max: -6, noNaN: true }).map((power) => 10 ** power),
  rs: fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1, noNaN: true })),
  rsh: fc.oneof(fc.constant(Infinity), fc.double({ min: 20, max: 1e9, noNaN: true })),
  a: fc.double({ min: 0.5, max: 5, noNaN: true }),
})

test('Lambert W solves w + ln w = y from the smallest to the largest argument', () => {
  for (const y of [-700, -41, -39, -5, -1.01, -0.99, 0, 1, 1.99, 2.01, 10, 1e4, 1e99]) {
    const w = lambertWOfExp(y)
    expect(Math.abs(w + Math.log(w) - y)).toBeLessThanOrEqual(4e-16 * Math.max(1, Math.abs(y), w))
  }
})

test('voltage undoes current, also without series resistance and without shunt', () => {
  const run = fc.property(diodes, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (d, share) => {
    const i = share * shortCircuit(d)
    const v = voltageAt(d, i)
    return v <= 0 || Math.abs(currentAt(d, v) / i - 1) < 1e-9
  })
  fc.assert(run, { numRuns: 3000 })
})

test('no point of the curve has more power than the maximum', () => {
  const run = fc.property(diodes, (d) => {
    const best = maxPower(d)
    return curve(d, 100).every(({ p }) => p <= best.p * (1 + 1e-9) + 1e-12)
  })
  fc.assert(run, { numRuns: 300 })
})

test('a curve runs from short to open circuit with rising voltage and falling current', () => {
  const d = { il: 6.3, i0: 1e-10, rs: 0.2, rsh: 150, a: 0.9 }
  const points = curve(d, 100)
  expect(points).toHaveLength(100)
  expect(points[0]).toEqual({ v: 0, i: shortCircuit(d), p: 0 })
  expect(points[99]).toEqual({ v: openCircuit(d), i: 0, p: 0 })
  expect(points.every((point, k) => k === 0 || (point.v > points[k - 1]!.v && point.i < points[k - 1]!.i))).toBe(true)
})

test('the dark gives nothing', () => {
  expect(maxPower({ il: 0, i0: 1e-10, rs: 0.2, rsh: Infinity, a: 0.9 })).toEqual({ v: 0, i: 0, p: 0 })
})
