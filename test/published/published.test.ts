import { expect, test } from 'vitest'
import { allChecks } from './all.checks.ts'

test.each(allChecks)('$check ($source)', ({ ours, theirs, within }) => {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(within)
})

test('every check names its source', () => {
  expect(allChecks.filter(({ source }) => source.length < 10)).toEqual([])
})
