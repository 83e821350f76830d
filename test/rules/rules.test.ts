import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { allFacts } from '../../server/src/check/facts.ts'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'
import { batteryRules } from '../../server/src/rules/battery/index.generated.ts'
import { climateRules } from '../../server/src/rules/climate/index.generated.ts'
import { controllerRules } from '../../server/src/rules/controller/index.generated.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'
import { lineStarts, positionAt } from '../../server/src/text/lines.ts'
import { marked } from '../markers.ts'
import { examples } from './fixtures.ts'
import { foundIn } from './found.ts'

test.each(examples)('$rule: $title', (example) => {
  const { source, marks, found } = foundIn(example)
  const starts = lineStarts(source)
  expect(
    found.map(({ span, message }) => {
      const from = positionAt(starts, span.start)
      return { line: from.line, from: from.character, to: positionAt(starts, span.end).character, text: message }
    }),
  ).toEqual(marks.map((mark) => ({ ...mark, text: expect.stringContaining(mark.text) as string })))
})

const rules = [...panelRules, ...controllerRules, ...batteryRules, ...climateRules, ...reviewRules]

test.each(rules.map(({ id }) => id))('%s has an example that is found and one that is not', (id) => {
  const own = examples.filter(({ rule }) => rule === id).map(({ yaml }) => marked(yaml).marks.length)
  expect(own.some((n) => n > 0) && own.some((n) => n === 0)).toBe(true)
})

test.each(allFacts.flatMap(({ rules: all }) => all.map(({ id }) => id)))('%s has an example in the reference', (id) => {
  expect(readFileSync(`test/rules/${id}.md`, 'utf8')).toMatch(/^```(?:yaml|text)/m)
})
