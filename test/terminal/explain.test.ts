import { expect, test } from 'vitest'
import { allFacts } from '../../server/src/check/facts.ts'
import { wattproof } from './run.ts'

const rules = allFacts.flatMap((group) => group.rules)

test('without a rule, all of them are listed with severity and reason', () => {
  const lines = wattproof(['explain']).out.trimEnd().split('\n')
  const found = lines.map((line) => line.split(/ {2,}/))
  expect(found.sort()).toEqual(rules.map(({ id, severity, reason }) => [id, severity, reason]).sort())
})

test.each(['voc-below-vmp', rules[0]?.id ?? '', rules.at(-1)?.id ?? ''])(
  '%s: severity, reason and source, and no other rule',
  (id) => {
    const { out } = wattproof(['explain', id])
    const rule = rules.find((one) => one.id === id)
    expect(out).toContain(`Severity: ${rule?.severity}. ${rule?.reason}`)
    expect(out).toContain(`Source: ${rule?.source}`)
    expect(out).not.toMatch(/^#{2,3} /m)
  },
)
