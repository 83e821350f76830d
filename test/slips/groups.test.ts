import { expect, test } from 'vitest'
import { countsCells, groupOf } from '../../server/src/slips/model/group.ts'

test.each([
  [undefined, 'mono', true],
  ['mono', 'mono', true],
  ['perc', 'mono', true],
  ['topcon', 'mono', true],
  ['hjt', 'mono', true],
  ['back-contact', 'mono', true],
  ['poly', 'poly', true],
  ['cigs', 'thin', false],
  ['cdte', 'thin', false],
  ['a-si', 'thin', false],
])('%s is compared with %s', (technology, group, counts) => {
  expect(groupOf({ ...(technology && { technology }), construction: 'rigid', readings: {} })).toBe(group)
  expect(countsCells(groupOf({ ...(technology && { technology }), construction: 'rigid', readings: {} }))).toBe(counts)
})
