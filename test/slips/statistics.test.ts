// How many mistakes the search sees on product families that its calibration has never seen. Ratings: test/published/data.
import { execFileSync } from 'node:child_process'
import { beforeAll, expect, test } from 'vitest'
// @ts-expect-error the calibration scripts carry no types
import { calibrate } from '../../.scripts/calibrate/groups.mjs'
// @ts-expect-error the calibration scripts carry no types
import { groupOf, readRatings } from '../../.scripts/calibrate/ratings.mjs'
import type { Calibration } from '../../server/src/slips/model/calibration.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { mistakes } from './mistakes.ts'
import { evidence } from './records.ts'
import { halves, printed, type Row } from './rows.ts'

let seen: Row[]
let unseen: Row[]
let calibration: Calibration

beforeAll(async () => {
  const rows = readRatings('test/published/data/modules-open.csv').filter(groupOf) as Row[]
  ;[seen, unseen] = halves(rows)
  calibration = (await calibrate(seen)) as Calibration
}, 240_000)

test('the calibration that is kept is the one that the script makes', () => {
  expect(() => execFileSync('node', ['.scripts/calibrate.mjs', '--check'], { stdio: 'pipe' })).not.toThrow()
}, 240_000)

test('true records of unseen families stay quiet, but for wrong cell counts of the list itself', () => {
  const verdicts = unseen.map((row) => findSlip(evidence(row.sort, printed(row)), null, calibration))
  const alarms = verdicts.filter((v) => v.kind !== 'consistent')
  const others = alarms.filter((v) => v.kind !== 'slip' || v.pointer !== '/cells/in_series')
  expect(unseen.length).toBeGreaterThan(1500)
  expect(alarms.length / unseen.length).toBeLessThan(0.01)
  expect(others.length / unseen.length).toBeLessThan(0.006)
})

test.each([
  { slip: 'digits swapped', caught: 0.83, fixed: 0.8 },
  { slip: 'digit dropped', caught: 0.81, fixed: 0.67 },
  { slip: 'digit doubled', caught: 0.84, fixed: 0.84 },
  { slip: 'neighbouring key', caught: 0.73, fixed: 0.66 },
  { slip: 'point dropped', caught: 0.98, fixed: 0.9 },
  { slip: 'voltages swapped', caught: 0.99, fixed: 0.99 },
  { slip: 'currents swapped', caught: 0.99, fixed: 0.99 },
  { slip: 'coefficients swapped', caught: 0.86, fixed: 0.86 },
  { slip: 'sign lost', caught: 0.99, fixed: 0.97 },
  { slip: 'length unit', caught: 0.98, fixed: 0.95 },
  { slip: 'cell count', caught: 0.82, fixed: 0.78 },
])('$slip: at least $caught caught and $fixed fixed', ({ slip, caught, fixed }) => {
  const made = mistakes(unseen, slip, 200, 11)
  const verdicts = made.map(({ row, texts }) => findSlip(evidence(row.sort, texts), null, calibration))
  const fixes = verdicts.filter(
    (v, i) => v.kind === 'slip' && made[i]!.pointers.includes(v.pointer) && v.text === printed(made[i]!.row)[v.pointer],
  )
  expect(made.length).toBe(200)
  expect(verdicts.filter((v) => v.kind !== 'consistent').length / made.length).toBeGreaterThan(caught)
  expect(fixes.length / made.length).toBeGreaterThan(fixed)
})
