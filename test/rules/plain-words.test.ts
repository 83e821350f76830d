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

test('so do the titles of examples and the README', () => {
  const lines = readFileSync('README.md', 'utf8').split('\n')
  const titles = examples.map(({ title }) => title)
  expect([...lines, ...titles].filter((line) => clumsy.test(line))).toEqual([])
})
