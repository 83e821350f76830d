import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { examples } from './fixtures.ts'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'
import { batteryRules } from '../../server/src/rules/battery/index.generated.ts'
import { climateRules } from '../../server/src/rules/climate/index.generated.ts'
import { controllerRules } from '../../server/src/rules/controller/index.generated.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'

/** Words that no native speaker of the trade would use of a panel or a record. */
const clumsy =
  /\b(mend(s|ed|ing)?|told|bears?|dear(er)?|1 strings|parts thousands)\b|\b(that|which|who|panels?|input) stands?\b|\blies? (above|below|outside|within|beyond)\b/i

const rules = [...panelRules, ...controllerRules, ...batteryRules, ...climateRules, ...reviewRules]

test.each(rules)('$id speaks plainly', ({ reason, messages }) => {
  expect([reason, ...Object.values(messages)].filter((text) => clumsy.test(text))).toEqual([])
})

/** Words that have plainer ones: fix, reported, is, expensive, after, space. Air, glass and walls may well be in the way. */
const odd =
  /\b(mend(s|ed|ing)?|told|dear(er)?|blanks?|bears?|1 strings|parts thousands)\b|(?<!\bair )(?<!-)\bbehind\b(?!-)(?! (glass|walls|the panel))|\bstands? (here|there|in|beside|below|above|behind)\b|\blies? (above|below|outside|within|beyond)\b/i

test('so does every message, in its English template', () => {
  const templates = Object.values(JSON.parse(readFileSync('server/messages.json', 'utf8')) as Record<string, string>)
  expect(templates.length).toBeGreaterThan(800)
  expect(templates.filter((template) => odd.test(template))).toEqual([])
})

test.each([
  'README.md',
  'CHANGELOG.md',
  'package.json',
  'schemas/rules.md',
  'schemas/fields.md',
  'samples/mistakes/README.md',
  'samples/systems/README.md',
])('so does %s', (path) => {
  const lines = readFileSync(path, 'utf8').split('\n')
  expect(lines.filter((line) => odd.test(line) || clumsy.test(line))).toEqual([])
})

test('so do the titles of examples', () => {
  expect(examples.map(({ title }) => title).filter((line) => odd.test(line))).toEqual([])
})
