import fc from 'fast-check'
import { expect, test } from 'vitest'
import { acceptComments } from '../../server/src/text/accept-comments.ts'
import { appendComment, insertEntry, removeEntry, renameKey, setScalar } from '../../server/src/text/edits.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { applyEdits, type Edit } from '../../server/src/text/span.ts'
import { entriesOf, nodeAtPointer } from '../../server/src/text/tree-queries.ts'
import type { Tree } from '../../server/src/text/tree.ts'
import { record } from './samples.ts'

const edited = (text: string, edit: (tree: Tree) => Edit) => applyEdits(text, [edit(readTree(text))])

test.each([
  ['a: 1 V  # c', '/a', '2 V', 'a: 2 V  # c'],
  ['a: "1 V"', '/a', '2 V', 'a: "2 V"'],
  ["a: '1 V'", '/a', "it's", "a: 'it''s'"],
  ['a: { b: 1 V }', '/a/b', '1, typ', 'a: { b: "1, typ" }'],
  ['a: 1 V', '/a', '1, typ', 'a: 1, typ'],
  ['a: x', '/a', 'Panel #4', 'a: "Panel #4"'],
  ['a: x', '/a', 'b: "c"', 'a: \'b: "c"\''],
  ['a:  # c\nb: 1', '/a', '2', 'a: 2  # c\nb: 1'],
  ['a: \nb: 1', '/a', '2', 'a: 2\nb: 1'],
  ['a: { b: , c: 1 }', '/a/b', '2', 'a: { b: 2, c: 1 }'],
  ['a: - 0.3 %', '/a', '-0.3 %', 'a: -0.3 %'],
  ['{"a": 1}', '/a', '2 V', '{"a": "2 V"}'],
  ['{"a": "1 V"}', '/a', '2 "V"', '{"a": "2 \\"V\\""}'],
  ['{"a": 1}', '/a', '2.5', '{"a": 2.5}'],
  ['a: [1, 2]', '/a/1', '3', 'a: [1, 3]'],
])('setScalar in %j', (text, pointer, value, expected) =>
  expect(edited(text, (tree) => setScalar(tree, pointer, value))).toBe(expected),
)

test.each([
  ['a: 1 # c', '/a', 'b', 'b: 1 # c'],
  ['{"a": 1}', '/a', 'b', '{"b": 1}'],
  ['x: { a: 1 }', '/x/a', 'b c', 'x: { b c: 1 }'],
])('renameKey in %j', (text, pointer, key, expected) =>
  expect(edited(text, (tree) => renameKey(tree, pointer, key))).toBe(expected),
)

test.each([
  ['a: 1  # c\nb: 2\n', '', 'a', 'a: 1  # c\nk: 9 V\nb: 2\n'],
  ['a: 1\r\nb: 2', '', undefined, 'a: 1\r\nb: 2\r\nk: 9 V'],
  ['s:\n    a: 1\nb: 2\n', '/s', undefined, 's:\n    a: 1\n    k: 9 V\nb: 2\n'],
  ['s: # c\nb: 2\n', '/s', undefined, 's: # c\n  k: 9 V\nb: 2\n'],
  ['s: { a: 1, b: 2 }', '/s', 'a', 's: { a: 1, k: 9 V, b: 2 }'],
  ['s: {}', '/s', undefined, 's: { k: 9 V }'],
  ['s: { a: }', '/s/a', undefined, 's: { a: { k: 9 V } }'],
  ['{\n  "a": 1\n}\n', '', undefined, '{\n  "a": 1,\n  "k": "9 V"\n}\n'],
  ['- a: 1\n  b: 2\n', '/0', 'a', '- a: 1\n  k: 9 V\n  b: 2\n'],
  ['', '', undefined, 'k: 9 V\n'],
  ['# c', '', undefined, '# c\nk: 9 V\n'],
  ['s:\n  t: |\n    x\n  u: 1', '/s', 't', 's:\n  t: |\n    x\n  k: 9 V\n  u: 1'],
])('insertEntry in %j', (text, parent, after, expected) =>
  expect(edited(text, (tree) => insertEntry(tree, parent, 'k', '9 V', after))).toBe(expected),
)

test.each([
  ['a: 1 # c\nb: 2\n', '/a', 'b: 2\n'],
  ['a: 1\r\nb: 2\r\n', '/b', 'a: 1\r\n'],
  ['s:\n  a: { x: 1,\n    y: 2 }\n  b: 2\n', '/s/a', 's:\n  b: 2\n'],
  ['s: { a: 1, b: 2 }', '/s/a', 's: { b: 2 }'],
  ['s: { a: 1, b: 2 }', '/s/b', 's: { a: 1 }'],
  ['- a: 1\n  b: 2\n', '/0/a', '- b: 2\n'],
])('removeEntry in %j', (text, pointer, expected) =>
  expect(edited(text, (tree) => removeEntry(tree, pointer))).toBe(expected),
)

test.each([
  ['a: 1\nb: 2', '/a', 'a: 1  # accept x: y\nb: 2'],
  ['a: 1 # as printed\r\nb: 2', '/a', 'a: 1 # as printed ; accept x: y\r\nb: 2'],
  ['s:\n  a: 1', '/s', 's:  # accept x: y\n  a: 1'],
  ['s: { a: 1, b: 2 }\nc: 1', '/s/a', 's: { a: 1, b: 2 }  # accept x: y\nc: 1'],
  ['a: |\n  x', '/a', 'a: |  # accept x: y\n  x'],
])('appendComment in %j', (text, pointer, expected) => {
  const after = edited(text, (tree) => appendComment(tree, pointer, 'accept x: y'))
  expect(after).toBe(expected)
  const [comment, ...others] = acceptComments(readTree(after))
  expect(others).toEqual([])
  expect(comment).toMatchObject({ rule: 'x', because: 'y' })
  expect(comment!.pointers).toContain(pointer)
})

test('one comment may hold several acceptances', () => {
  const text = 'a: { b: 1 }  # as printed ; accept one-rule: because; so ; accept two\n# accept three : z'
  const found = acceptComments(readTree(text)).map(({ span, ruleSpan: _, ...rest }) => ({
    ...rest,
    words: text.slice(span.start, span.end),
  }))
  expect(found).toEqual([
    { rule: 'one-rule', because: 'because; so', pointers: ['/a', '/a/b'], words: 'accept one-rule: because; so' },
    { rule: 'two', because: '', pointers: ['/a', '/a/b'], words: 'accept two' },
    { rule: 'three', because: 'z', pointers: [], words: 'accept three : z' },
  ])
})

const pointers = [...new Set(entriesOf(readTree(record)).map(({ entry }) => entry.pointer))]
const scalars = pointers.filter((pointer) => nodeAtPointer(readTree(record), pointer)?.kind === 'scalar')
const anyText = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: fc.constantFrom(...'a1 :#,[]{}&*!|>\'"%@`-?.\\\n\t°~='), minLength: 1, maxLength: 8 }),
)

test.each(['\n', '\r\n'])(
  'a value that is set reads as it was meant, and nothing else changes (line ending %j)',
  (eol) => {
    const text = record.replaceAll('\n', eol)
    fc.assert(
      fc.property(fc.constantFrom(...scalars), anyText, (pointer, value) => {
        const tree = readTree(text)
        const edit = setScalar(tree, pointer, value)
        const after = applyEdits(text, [edit])
        const reread = readTree(after)
        const node = nodeAtPointer(reread, pointer)
        expect(node).toMatchObject({ kind: 'scalar', text: value })
        expect(after.slice(0, edit.span.start)).toBe(text.slice(0, edit.span.start))
        expect(after.slice(edit.span.start + edit.text.length)).toBe(text.slice(edit.span.end))
        const others = scalars.filter((other) => other !== pointer)
        const texts = (t: Tree) => others.map((other) => (nodeAtPointer(t, other) as { text?: string } | null)?.text)
        expect(texts(reread)).toEqual(texts(tree))
      }),
      { numRuns: 150 },
    )
  },
)

test('inserting, removing and commenting leave all other fields as they were', () => {
  const all = (tree: Tree) =>
    entriesOf(tree).map(({ entry: { pointer, value } }) => [pointer, value?.kind === 'scalar' ? value.text : null])
  fc.assert(
    fc.property(fc.constantFrom(...pointers), anyText, (pointer, value) => {
      const tree = readTree(record)
      const before = all(tree)
      const commented = readTree(edited(record, (t) => appendComment(t, pointer, 'accept x: y')))
      expect(all(commented)).toEqual(before)
      expect(acceptComments(commented).map(({ pointers }) => pointers.includes(pointer))).toContain(true)
      const removed = readTree(edited(record, (t) => removeEntry(t, pointer)))
      expect(all(removed)).toEqual(
        before.filter(([other]) => other !== pointer && !String(other).startsWith(`${pointer}/`)),
      )
      if (nodeAtPointer(tree, pointer)?.kind === 'map' && value !== '') {
        const grown = readTree(edited(record, (t) => insertEntry(t, pointer, 'new', value)))
        expect(nodeAtPointer(grown, `${pointer}/new`)).toMatchObject({ text: value })
        expect(all(grown).filter(([other]) => other !== `${pointer}/new`)).toEqual(before)
      }
    }),
    { numRuns: 100 },
  )
})
