import { expect, test } from 'vitest'
import { longestText, readTree } from '../../server/src/text/read-tree.ts'
import type { Node } from '../../server/src/text/tree.ts'

/** The tree as plain data; `!` marks a key without a colon. */
function plain(node: Node | null): unknown {
  if (node === null) return null
  if (node.kind === 'scalar') return node.text
  if (node.kind === 'list') return node.items.map(plain)
  return Object.fromEntries(
    node.entries.map((entry) => [(entry.colon === null ? '!' : '') + entry.key, plain(entry.value)]),
  )
}

test.each([
  ['digits stay as typed', "a: 18.60\nb: \"x\\ty\"\nc: 'it''s'\nd: ~", { a: '18.60', b: 'x\ty', c: "it's", d: '~' }],
  ['JSON', '{"a": 1190, "b": [1, "2 V"], "c": null}', { a: '1190', b: ['1', '2 V'], c: 'null' }],
  ['byte order mark and Windows lines', '\ufeffa: 1\r\nb:\r\n  c: 2 V # d\r\n', { a: '1', b: { c: '2 V' } }],
  ['block text', 'a: |\n  x: 1\n  y\nb: 2', { a: 'x: 1\ny\n', b: '2' }],
  ['nothing', '', null],
  ['only a comment', '# x', null],
  [
    'anchors, tags, aliases stay words',
    'a: &110 W\nb: !110 W\nc: { d: *110 W, e: 1 }',
    { a: '&110 W', b: '!110 W', c: { d: '*110 W', e: '1' } },
  ],
  [
    'lonely minus',
    'voc: - 0.38 %/K\nb: { c: - 1 V, d: 2 }\ne: -',
    { voc: '- 0.38 %/K', b: { c: '- 1 V', d: '2' }, e: '-' },
  ],
  [
    'block signs',
    'a: > 20 %\nb: | 5\nc: >= 3 V\nd: >20 %\ne: 1',
    { a: '> 20 %', b: '| 5', c: '>= 3 V', d: '>20 %', e: '1' },
  ],
  ['colon in a text', 'a: key: more: x\nb: 2', { a: 'key: more: x', b: '2' }],
  ['text behind a quote', 'a: "110" W\nb: { c: "110" W, d: 2 }', { a: '"110" W', b: { c: '"110" W', d: '2' } }],
  [
    'no space behind a colon',
    'stc:\n  voc:22.1 V\n  isc: 1 A\nb: 1',
    { stc: { '!voc:22.1 V': null, isc: '1 A' }, b: '1' },
  ],
  ['no colon', 'stc:\n  voc 22.1 V # hm\n  isc: 1 A\nb: 1', { stc: { '!voc 22.1 V': null, isc: '1 A' }, b: '1' }],
  ['half-typed key', 'a: 1\nstc:\n  vo', { a: '1', stc: 'vo' }],
  ['tabs', 'stc:\n\tvoc: 1\n\tisc: 2\nb: 3', { stc: { voc: '1', isc: '2' }, b: '3' }],
  ['open quote', 'a: "abc\nb: 1\nc: 2', { a: 'abc', b: '1', c: '2' }],
  ['stray bracket', 'a: {b: 1}}\nc: 1', { a: { b: '1' }, c: '1' }],
  ['open bracket', 'a: { b: 1, c\nd: [1, 2\ne: 3', { a: { b: '1', '!c': null }, d: ['1', '2'], e: '3' }],
  [
    'missing comma',
    'a: { b: 1 V c: 2 V }\nd: { e: 1 V; f: 2 V }\ng: { h: 1\n  i: 2 }',
    { a: { b: '1 V', c: '2 V' }, d: { e: '1 V', f: '2 V' }, g: { h: '1', i: '2' } },
  ],
  ['indented under a value', 'a: 1\n  b: 2\nc: 3', { a: '1', b: '2', c: '3' }],
])('%s', (_, text, expected) => expect(plain(readTree(text).root)).toEqual(expected))

test('keeps both entries of a key typed twice', () => {
  const { root } = readTree('a: 1\na: 2')
  expect(root?.kind === 'map' && root.entries.map((entry) => [entry.pointer, plain(entry.value)])).toEqual([
    ['/a', '1'],
    ['/a', '2'],
  ])
})

test('spans hold the value alone, and comments are known', () => {
  const text = 'a: { b: 5.92 A }  # c\nd:  "x"   # e #f\ng: h#i\n'
  const tree = readTree(text)
  const spans: string[] = []
  const visit = (node: Node | null) => {
    if (!node) return
    if (node.kind !== 'map') return void spans.push(text.slice(node.span.start, node.span.end))
    for (const entry of node.entries) {
      spans.push(text.slice(entry.keySpan.start, entry.keySpan.end))
      visit(entry.value)
    }
    spans.push(text.slice(node.span.start, node.span.end))
  }
  visit(tree.root)
  expect(spans).toEqual(['a', 'b', '5.92 A', '{ b: 5.92 A }', 'd', '"x"', 'g', 'h#i', text.trimEnd()])
  expect(tree.comments.map((comment) => [comment.text, text.slice(comment.span.start, comment.span.end)])).toEqual([
    ['c', '# c'],
    ['e #f', '# e #f'],
  ])
})

test.each([
  ['too-big', `a: ${'x'.repeat(longestText)}`, 0, null],
  ['too-deep', '['.repeat(200), 0, null],
  ['conflict-markers', 'a: 1\n<<<<<<< HEAD\na: 2\n=======\na: 3\n>>>>>>> other\n', 5, '<<<<<<< HEAD'],
  ['second-document', 'a: 1\n---\nb: 2', 5, '---'],
])('%s', (code, text, start, words) => {
  const { problems, root } = readTree(text)
  expect(problems.map((problem) => [problem.code, problem.span.start])).toEqual([[code, start]])
  if (words) expect(text.slice(problems[0]!.span.start, problems[0]!.span.end)).toBe(words)
  expect(root === null).toBe(code.startsWith('too-'))
})

test.each([
  ['a: @x y\nb: 1', '@x y', 'YAML keeps the sign at the beginning of @x y for itself: put the text in quotes.'],
  ['a:\n  b: 1\n c: 2', 'c', 'c is indented by 1 space, its neighbours by 2.'],
  ['a: 1\n  b: 2\nc: 3', 'b', 'b is indented by 2 spaces, its neighbours by 0.'],
  ['b: 1\n}\nc: 1', '}', '} closes a bracket that was never opened: take it out, or open it.'],
  ['a: "abc\nb: 1', '"abc', 'The quote before abc is not closed on its line: add one at the end of the text.'],
  ['a: [1, 2\nb: 3', 'a: [1, 2', 'a: [1, 2 lacks its ].'],
  ['a: [1, 2,\nb: 3', 'b', 'A [ is still open before b: close it with ] where the list ends.'],
  ['a: { b: 1, , c: 2}', ',', 'A comma is here with nothing in front of it: take one out.'],
])('explains %j plainly', (text, words, message) => {
  const [problem, ...others] = readTree(text).problems
  expect(others).toEqual([])
  expect(problem?.message).toBe(message)
  expect(text.slice(problem!.span.start, problem!.span.end)).toBe(words)
})
