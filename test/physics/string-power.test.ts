import fc from 'fast-check'
import { expect, test } from 'vitest'
import { largestPower, stringVoltage } from '../../server/src/physics/array-curve.ts'
import { maxPower, type Diode } from '../../server/src/physics/single-diode.ts'
import { stringPower, type Part } from '../../server/src/physics/string-power.ts'

const sheet: Diode = { il: 6, i0: 1e-9, rs: 0.3, rsh: 200, a: 1.05 }

/** The sheet's panel in a share of the sun. */
const inLight = (share: number): Diode => ({ ...sheet, il: sheet.il * share, rsh: sheet.rsh / share })

const parts = fc.array(
  fc.record({
    diode: fc.double({ min: 0.02, max: 1, noNaN: true }).map(inLight),
    count: fc.integer({ min: 1, max: 6 }),
    bypass: fc.integer({ min: 0, max: 4 }),
  }),
  { minLength: 2, maxLength: 4 },
)

test('no current of a string gives more than its largest power, and one gives as much', () => {
  const run = fc.property(parts, (string) => {
    const power = stringPower(string)
    const most = scanned(string, 1000)
    expect(power).toBeGreaterThanOrEqual(most * (1 - 1e-6)) // a parabola stands for the top
    expect(most).toBeGreaterThanOrEqual(power * 0.999)
  })
  fc.assert(run, { numRuns: 300 })
})

test('the same where much of the current leaks through the shunts, and panels are unlike', () => {
  const leaky = fc
    .record({
      il: fc.double({ min: 0.1, max: 9, noNaN: true }),
      i0: fc.double({ min: -11, max: -8, noNaN: true }).map((power) => 10 ** power),
      rs: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
      rsh: fc.double({ min: 20, max: 60, noNaN: true }),
      a: fc.double({ min: 0.7, max: 1.7, noNaN: true }),
    })
    .map((diode): Part => ({ diode, count: 1, bypass: 2 }))
  const run = fc.property(fc.array(leaky, { minLength: 2, maxLength: 3 }), (string) => {
    const [power, most] = [stringPower(string), scanned(string, 4000)]
    expect(power).toBeGreaterThanOrEqual(most * (1 - 1e-6))
    expect(most).toBeGreaterThanOrEqual(power * 0.999)
  })
  fc.assert(run, { numRuns: 150 })
})

/** @returns the largest power at currents up to the light current of each panel [W] */
function scanned(parts: readonly Part[], steps: number): number {
  let most = 0
  for (const { diode } of parts)
    for (let k = 1; k <= steps; k++) {
      const current = (1.01 * diode.il * k) / steps
      most = Math.max(most, current * stringVoltage({ parts, count: 1 }, current))
    }
  return most
}

test('alike panels give what each would alone', () => {
  const string = [
    { diode: sheet, count: 2, bypass: 2 },
    { diode: sheet, count: 3, bypass: 2 },
  ]
  expect(stringPower(string)).toBeCloseTo(5 * maxPower(sheet).p, 3)
})

test('a panel in the dark costs its own power and the drop of its bypass diodes', () => {
  const dark = { diode: { ...sheet, il: 0, rsh: Infinity }, count: 1, bypass: 2 }
  const { p, i } = maxPower(sheet)
  expect(stringPower([{ diode: sheet, count: 3, bypass: 2 }, dark])).toBeCloseTo(3 * p - 2 * 0.5 * i, 1)
})

test('without bypass diodes the weakest panel bounds the current', () => {
  const string = [
    { diode: sheet, count: 1, bypass: 0 },
    { diode: inLight(0.1), count: 1, bypass: 0 },
  ]
  expect(largestPower([{ parts: string, count: 2 }])).toBeLessThan(2 * (0.1 * 6.1) * (24 + 24))
})
