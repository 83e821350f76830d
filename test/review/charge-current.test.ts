import { expect, test } from 'vitest'
import { bankOf, chargeCurrent } from '../../server/src/review/bank.ts'
import { controllersOf } from '../../server/src/review/controllers.ts'
import { example, seeking, switching } from './example.ts'

const current = (controller: string) => {
  const system = example({ controller, count: 2, strings: 2 })
  return chargeCurrent(controllersOf(system)[0]!, bankOf(system)!)!
}

test('a controller that only switches passes the short-circuit current of its strings, which Voc and power do not raise', () => {
  expect(current(switching)).toBeCloseTo(2 * 6.31, 6)
  expect(current(switching.replace('60 A', '5 A'))).toBeCloseTo(2 * 6.31, 6)
})

test('one that seeks the maximum power point passes power over voltage, up to its limit', () => {
  expect(current(seeking)).toBeGreaterThan(2 * 6.31)
  expect(current(seeking.replace('60 A', '5 A'))).toBe(5)
})
