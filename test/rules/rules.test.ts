import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { allFacts } from '../../server/src/check/facts.ts'
import { toFinding } from '../../server/src/check/in-words.ts'
import { applyRules } from '../../server/src/check/apply-rules.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { Library } from '../../server/src/library/library.ts'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'
import { batteryRules } from '../../server/src/rules/battery/index.generated.ts'
import { climateRules } from '../../server/src/rules/climate/index.generated.ts'
import { controllerRules } from '../../server/src/rules/controller/index.generated.ts'
import type { FamilyAbout, PanelAbout } from '../../server/src/rules/about.ts'
import type { Panel } from '../../server/src/records/records.generated.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { siteOf } from '../../server/src/values/site.ts'
import { lineStarts, positionAt } from '../../server/src/text/lines.ts'
import { marked } from '../markers.ts'
import { examples, filesOf } from './fixtures.ts'

const today = '2026-11-25'

test.each(examples)('$rule: $title', (example) => {
  const { rule } = example
  const [first, ...others] = filesOf(example)
  const { path, text } = first!
  const { source, marks } = marked(text)
  const library = createLibrary()
  library.put(path, source)
  for (const other of others) library.put(other.path, other.text)
  const starts = lineStarts(source)
  const file = library.file(path)!
  const isOfPanels = panelRules.some(({ id }) => id === rule)
  const all =
    isOfPanels && file.kind === 'panel'
      ? alone(library, file as ReadFile<'panel'>)
      : checkFile(library, path, { today })!.findings
  const found = all.filter((f) => f.rule === rule)
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

/** The rules of a panel by themselves: in a whole check one mistake is reported once, by the strongest of them. */
function alone(library: Library, file: ReadFile<'panel'>) {
  const others = library.ofKind('panel', file.path).filter(({ path }) => path !== file.path)
  const found = applyRules<Panel, PanelAbout & FamilyAbout>(panelRules, file, {
    settings: undefined,
    site: siteOf(undefined),
    today,
    typed: (pointer) => file.fields.has(pointer),
    siblings: others,
    kin: others,
  })
  return found.map((one) => toFinding(one, file.kind))
}
