import { expect, test } from 'vitest'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'
import { foundEverywhere } from './found-everywhere.ts'

const all = foundEverywhere()
const said = [...new Set(all.map(({ message }) => message))]

test('no message has more than 160 characters, and half of them no more than 100', () => {
  expect(said.length).toBeGreaterThan(400)
  expect(said.filter(({ length }) => length > 160)).toEqual([])
  expect(said.map(({ length }) => length).sort((a, b) => a - b)[said.length >> 1]).toBeLessThanOrEqual(100)
})

const ofFigures = new Set([...panelRules, ...reviewRules].map(({ id }) => id))

test('the figure that would be right is in the first 70 characters, for lists are cut at the right', () => {
  const fixed = all.filter(({ rule, corrections: [first] }) => ofFigures.has(rule) && /^-?\d/.test(first?.text ?? ''))
  expect(fixed.length).toBeGreaterThan(80)
  const late = fixed.filter(({ message, corrections }) => !message.slice(0, 70).includes(corrections[0]!.text))
  expect(late.map(({ message }) => message)).toEqual([])
})
