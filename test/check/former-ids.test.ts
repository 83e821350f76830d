import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { allFacts } from '../../server/src/check/facts.ts'
import { formerRuleIds } from '../../server/src/check/former-rule-ids.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { check } from './checked.ts'

const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const heavy = tern.replace('weight: 2.2 kg', 'weight: 9 kg')
const ids = (text: string, settings?: string) =>
  check(text, settings ? { settings } : {}).findings.map(({ rule }) => rule)

test('every old id names a rule of today and none of today', () => {
  const rules = new Set(allFacts.flatMap((chapter) => chapter.rules.map(({ id }) => id)))
  const entries = Object.entries(formerRuleIds)
  expect(entries.filter(([old, current]) => rules.has(old) || !rules.has(current))).toEqual([])
  expect(entries.length).toBeGreaterThan(40)
})

test.each([
  ['a comment', heavy.replace('9 kg', '9 kg # accept weight-per-area: with its crate')],
  ['a quoted comment', heavy.replace('9 kg', '"9 kg"  # weighed ; accept   weight-per-area : with its crate')],
  ['the list', `${heavy}accepted: [{ rule: weight-per-area, field: /weight, because: with its crate }]\n`],
  ['the list, quoted', `${heavy}accepted: [{ rule: "weight-per-area", field: /weight, because: with its crate }]\n`],
])('an old id in %s still accepts, and one fix writes the new one', (_, text) => {
  expect(ids(heavy)).toEqual(['weight-per-area-unusual'])
  const { findings, accepted } = check(text)
  expect(accepted.map(({ finding }) => finding.rule)).toEqual(['weight-per-area-unusual'])
  expect(findings).toMatchObject([
    { rule: 'rule-renamed', severity: 'hint', message: 'weight-per-area is now called weight-per-area-unusual.' },
  ])
  const { span, corrections } = findings[0]!
  expect(text.slice(span.start, span.end).replaceAll('"', '')).toBe('weight-per-area')
  expect(corrections[0]!.certainty).toBe('same')
  const fixed = applyEdits(text, corrections[0]!.edits)
  expect(fixed.length - text.length).toBe('-unusual'.length)
  expect(ids(fixed)).toEqual([])
})

test('an old id that matches nothing is only an unused acceptance', () => {
  expect(ids(tern.replace('2.2 kg', '2.2 kg # accept weight-per-area: old'))).toEqual(['acceptance-unused'])
})

test('severities of an old id still count, and one fix writes the new one', () => {
  const settings = 'format: 1\nseverities: { weight-per-area: off }\n'
  expect(ids(heavy, settings)).toEqual([])
  const { findings } = check(settings, { path: 'wattproof.yaml' })
  expect(findings.map(({ message }) => message)).toEqual(['weight-per-area is now called weight-per-area-unusual.'])
  const fixed = applyEdits(settings, findings[0]!.corrections[0]!.edits)
  expect(fixed).toBe('format: 1\nseverities: { weight-per-area-unusual: off }\n')
})

test('where both ids have a severity the new one counts', () => {
  const settings = 'format: 1\nseverities: { weight-per-area-unusual: error, weight-per-area: off }\n'
  expect(check(heavy, { settings }).findings.map(({ severity }) => severity)).toEqual(['error'])
})
