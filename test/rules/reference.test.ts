import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'
import { batteryRules } from '../../server/src/rules/battery/index.generated.ts'
import { climateRules } from '../../server/src/rules/climate/index.generated.ts'
import { controllerRules } from '../../server/src/rules/controller/index.generated.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'

const reference = readFileSync('schemas/rules.md', 'utf8')
const catalogue = JSON.parse(readFileSync('server/messages.json', 'utf8')) as Record<string, string>

test.each([...panelRules, ...controllerRules, ...batteryRules, ...climateRules, ...reviewRules])(
  'the reference gives severity, reason and source of $id, the catalogue its messages',
  ({ id, severity, reason, source, messages }) => {
    expect(reference).toContain(`### ${id}\n\nSeverity: ${severity}. ${reason}\n\nSource: ${source}.\n`)
    for (const [name, text] of Object.entries(messages)) if (text) expect(catalogue[`${id}/${name}`]).toBe(text)
  },
)

test('no message of the catalogue is empty', () => {
  expect(Object.entries(catalogue).filter(([key, text]) => !key || !text)).toEqual([])
})
