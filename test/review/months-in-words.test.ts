import { expect, test } from 'vitest'
import { inWords } from '../../server/src/findings/words.ts'
import { monthsInWords } from '../../server/src/review/months-in-words.ts'

test.each([
  [[0, -1], 'no month'],
  [[0, 12], 'December'],
  [[12], 'December'],
  [[1, 2], 'January and February'],
  [[6, 7, 8], 'June to August'],
  [[1, 2, 10, 11, 12], 'October to February'],
  [[1, 4, 5, 6, 12], 'April to June, December and January'],
  [[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], 'every month'],
  [[1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 12], 'every month but July'],
])('%j: %s', (months, words) => {
  const said = { say: 'months', with: { months: monthsInWords(months) } }
  expect(inWords(said, { id: 'test', messages: { months: '{months}' } })).toBe(words)
})
