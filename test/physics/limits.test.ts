import { expect, test } from 'vitest'
import { fitDiode } from '../../server/src/physics/fit-diode.ts'
import { stringFuseWindow } from '../../server/src/physics/fuses.ts'
import { courseOf } from '../../server/src/physics/sun-hours.ts'
import { meanDays } from '../../server/src/physics/sun.ts'

// IEC 62548: 1.5 to 2.4 Isc; US National Electrical Code 690.9: 1.25 x 1.25 Isc and more; at most the module's maximum.
test.each([
  ['IEC' as const, Infinity, 15, 24],
  ['IEC' as const, 20, 15, 20],
  ['NEC' as const, Infinity, 15.625, Infinity],
  ['NEC' as const, 30, 15.625, 30],
  [undefined, Infinity, 15.625, 24],
  [undefined, 20, 15.625, 20],
])('the fuse of a string of 10 A by %s, module %s A', (practice, most, low, high) => {
  expect(stringFuseWindow(10, most, practice)).toEqual({ low, high })
})

const sheet = {
  pmax: 110,
  vmp: 18.6,
  imp: 5.92,
  voc: 22.1,
  isc: 6.31,
  cells: 36,
  alpha: 0.0005,
  beta: -0.0029,
  gamma: -0.0038,
}

test.each([
  [{ vmp: 22.1 }, 'Vmp is 100.0 % of Voc'],
  [{ imp: 6.31 }, 'Imp is 100.0 % of Isc'],
  [{ vmp: 11.05 }, 'Vmp is 50.0 % of Voc'],
  [{ imp: 3.155 }, 'Imp is 50.0 % of Isc'],
  [{ vmp: 11.5, imp: 3.5 }, 'the fill factor is 28.9 %'],
])('ratings %j have no curve, and it is said why', (change, why) => {
  const ratings = { ...sheet, ...change }
  expect(fitDiode({ ...ratings, pmax: ratings.vmp * ratings.imp })).toMatchObject({
    ok: false,
    why: expect.stringContaining(why) as string,
  })
})

test('each day of a place has shares of sun that add up to 1 while the sun is up, and none below the horizon', () => {
  const { globalShare, diffuseShare, up } = courseOf(
    43.5,
    meanDays.map((day, month) => ({ day, month })),
    { high: Array<number>(12).fill(20), low: Array<number>(12).fill(10) },
  )
  for (let d = 0; d < globalShare.length / 24; d++) {
    const day = (list: Float64Array) => list.subarray(24 * d, 24 * d + 24)
    for (const list of [globalShare, diffuseShare])
      expect(day(list).reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9)
    day(up).forEach((height, h) => height <= 0 && expect(day(globalShare)[h]).toBe(0))
  }
})
