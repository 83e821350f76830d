import fc from 'fast-check'
import { expect, test } from 'vitest'
import { acceptComments } from '../../server/src/text/accept-comments.ts'
import { appendComment, removeEntry, renameKey, setScalar } from '../../server/src/text/edits.ts'
import { hazards } from '../../server/src/text/hazards/index.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { applyEdits, type Span } from '../../server/src/text/span.ts'
import { inventory, keySpanOrValue, nodeAtPointer, pathAtOffset } from '../../server/src/text/tree-queries.ts'
import { record } from './samples.ts'

/** Does with a text all that can be done, and says which spans do not lie in it. */
function misplaced(text: string): Span[] {
  const tree = readTree(text)
  const { entries, scalars, collections } = inventory(tree)
  const found = hazards.flatMap((rule) => rule.find(tree))
  for (const hazard of found) for (const { edits } of hazard.fixes) readTree(applyEdits(text, edits))
  const accepted = acceptComments(tree)
  for (const { entry } of entries) {
    for (const edit of [setScalar, renameKey, appendComment].map((make) => make(tree, entry.pointer, 'x: 1')))
      applyEdits(text, [edit])
    applyEdits(text, [removeEntry(tree, entry.pointer)])
    nodeAtPointer(tree, entry.pointer)
  }
  for (let offset = 0; offset <= text.length; offset += 7) pathAtOffset(tree, offset)
  const spans = [
    ...[...scalars, ...collections, ...tree.problems, ...tree.comments, ...found, ...accepted].map(({ span }) => span),
    ...entries.flatMap(({ entry }) => [entry.keySpan, keySpanOrValue(tree, entry.pointer)]),
    ...found.flatMap(({ explains, related }) => [...explains, ...related.map(({ span }) => span)]),
  ]
  return spans.filter(({ start, end }) => !(0 <= start && start <= end && end <= text.length))
}

const noise = '\t \n\r:,-#{}[]&*!|>\'"%@`?~_<=0189aA°\ufeff\u0085\x00'

test('any beginning of a record', () => {
  for (let end = 0; end <= record.length; end += 5) expect(misplaced(record.slice(0, end))).toEqual([])
})

test.each([
  { reason: 'what only the second of two like keys holds', text: 'stc:\nstc:\n  pmax: 110 W\n' },
  { reason: 'what an open bracket at the end holds', text: 'a: 1\n[#~\n?' },
  { reason: 'what a # between brackets hides at the end', text: '{{#}\t' },
  { reason: 'what stands below a missing key', text: ': 1\n:\n  length: 1190 mm\n' },
])('$reason can be changed', ({ text }) => {
  expect(misplaced(text)).toEqual([])
})

test('any record with characters put in, left out or changed', () => {
  const change = fc.record({
    at: fc.nat(record.length),
    gone: fc.nat(3),
    text: fc.string({ unit: fc.constantFrom(...noise), maxLength: 3 }),
  })
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
      const text = changes.reduce((t, { at, gone, text }) => t.slice(0, at) + text + t.slice(at + gone), record)
      expect(misplaced(text)).toEqual([])
    }),
    { numRuns: 150 },
  )
})

test('any short text', () => {
  const text = fc.string({ unit: fc.constantFrom(...noise), maxLength: 30 })
  fc.assert(
    fc.property(text, (t) => void expect(misplaced(t)).toEqual([])),
    { numRuns: 800 },
  )
})
