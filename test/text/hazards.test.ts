import { describe, expect, test } from 'vitest'
import { phraseInWords } from '../../server/src/wording/phrase.ts'
import { explains, hazards } from '../../server/src/text/hazards/index.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { ofShape } from './hazard-cases-of-shape.ts'
import { ofSigns } from './hazard-cases-of-signs.ts'
import { record } from './samples.ts'

/** All hazards of a text as `id words: message`, and the complaints that none of them explains. */
function found(text: string) {
  const tree = readTree(text)
  const all = hazards.flatMap((rule) => rule.find(tree).map((hazard) => ({ id: rule.id, hazard })))
  const rest = tree.problems.filter((problem) => !all.some(({ hazard }) => explains(hazard, problem)))
  return { all, rest }
}

const cases = { ...ofSigns, ...ofShape }

test('every hazard has a case', () => expect(Object.keys(cases).sort()).toEqual(hazards.map(({ id }) => id).sort()))

describe.each(Object.entries(cases))('%s', (id, rows) => {
  test.each(rows)('$text', ({ text, on, says, fixed = [], spoils, swallows = [] }) => {
    const { all, rest } = found(text)
    expect(all.map((each) => [each.id, phraseInWords(each.hazard.message)])).toEqual([[id, says]])
    expect(rest).toEqual([])
    const { hazard } = all[0]!
    expect(text.slice(hazard.span.start, hazard.span.end)).toBe(on)
    expect(hazard.fixes.map(({ certainty, edits }) => [certainty, applyEdits(text, edits)])).toEqual(fixed)
    expect(hazard.spoils).toEqual(spoils ?? [hazard.pointer])
    expect(hazard.swallows).toEqual(swallows)
    for (const [, after] of fixed) {
      const again = found(after)
      expect([...again.all.map((each) => each.id), ...again.rest]).toEqual([])
    }
  })
})

test.each([
  ['a sound record', record],
  ['numbers in a list', 'months: [5, 6,7,8, 9]\nmore: [1,2,3]'],
  ['a comment behind a map', 'a: { b: 1 } #c\n# d }\n#e\nf: [1, #g\n  2]'],
  [
    'words with signs inside',
    'a: http://x.y/#z\nb: x-y *z & !w\nc: 12 V\nd: 2026-10-04\ne: 0.5\nf: -1\ng: 0\nh: ~110 W\ni: 012 V',
  ],
  ['quoted', 'a: "&110 W"\nb: \'- 1 V\'\nc: "> 5: #x"'],
  ['JSON', '{\n  "a": { "b": [1,2,3], "c": "x: y" }\n}\n'],
])('%s is no hazard', (_, text) => expect(found(text)).toEqual({ all: [], rest: [] }))
