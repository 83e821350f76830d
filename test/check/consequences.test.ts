import { expect, test } from 'vitest'
import { leaning } from '../../server/src/check/consequences.ts'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'

test('what draws no conclusion from an unread value is named as the rules are', () => {
  const ids = new Set(reviewRules.map(({ id }) => id))
  const named = leaning.flatMap(([, rules]) => rules)
  expect(named.length).toBeGreaterThan(25)
  expect(named.filter((id) => !ids.has(id))).toEqual([])
})
