import { expect, test } from 'vitest'
import { lineStarts, offsetAt, positionAt } from '../../server/src/text/lines.ts'
import { childPointer, parentPointer, pointerKeys } from '../../server/src/text/pointer.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { entryAtPointer, keySpanOrValue, nodeAtPointer, pathAtOffset } from '../../server/src/text/tree-queries.ts'

const text = 'a: { b: [1, { c/d: 2 }] }\ne:\n  f: x y\n  g:\n'
const tree = readTree(text)

test.each([
  ['', text.trimEnd()],
  ['/a/b/0', '1'],
  ['/a/b/1/c~1d', '2'],
  ['/e/f', 'x y'],
])('node at %j', (pointer, words) => {
  const span = nodeAtPointer(tree, pointer)!.span
  expect(text.slice(span.start, span.end)).toBe(words)
})

test('what is not there', () => {
  expect(nodeAtPointer(tree, '/a/x/y')).toBeNull()
  expect(nodeAtPointer(tree, '/e/g')).toBeNull()
  expect(entryAtPointer(tree, '/e/g')?.key).toBe('g')
  expect(entryAtPointer(tree, '/a/b/0')).toBeNull()
})

test.each([
  ['/e/f', 'x y'],
  ['/e', 'e'],
  ['/e/g', 'g'],
  ['/e/missing', 'e'],
  ['/a/b/1', '{ c/d: 2 }'],
  ['/missing', 'a: { b: [1, { c/d: 2 }] }'],
])('a finding about %j is shown at %j', (pointer, words) => {
  const span = keySpanOrValue(tree, pointer)
  expect(text.slice(span.start, span.end)).toBe(words)
})

test.each([
  ['1, {', ['/a', '/a/b']],
  ['c/d', ['/a', '/a/b', '/a/b/1/c~1d']],
  ['x y', ['/e', '/e/f']],
])('path at %j', (words, pointers) =>
  expect(pathAtOffset(tree, text.indexOf(words)).map((entry) => entry.pointer)).toEqual(pointers),
)

test('an empty field reaches to the end of its line', () => {
  expect(pathAtOffset(readTree('a:   \nb: 1'), 5).map((entry) => entry.key)).toEqual(['a'])
  expect(pathAtOffset(readTree('a: 1 \nb: 1'), 6).map((entry) => entry.key)).toEqual(['b'])
})

test('lines end with \\n, \\r\\n or \\r, and characters are UTF-16 units', () => {
  const lines = 'a°𝛀b\r\nc\rd\n\ne'
  const starts = lineStarts(lines)
  expect(starts).toEqual([0, 7, 9, 11, 12])
  expect(positionAt(starts, lines.indexOf('b'))).toEqual({ line: 0, character: 4 })
  expect(positionAt(starts, lines.length)).toEqual({ line: 4, character: 1 })
  for (let offset = 0; offset <= lines.length; offset++) {
    const inLineEnding = lines[offset - 1] === '\r' && lines[offset] === '\n'
    expect(offsetAt(starts, positionAt(starts, offset), lines)).toBe(inLineEnding ? offset - 1 : offset)
  }
  expect(offsetAt(starts, { line: 1, character: 99 }, lines)).toBe(8)
  expect(offsetAt(starts, { line: 99, character: 0 }, lines)).toBe(lines.length)
})

test('JSON pointers (RFC 6901, section 5)', () => {
  expect(['a/b', 'm~n', ''].map((key) => childPointer('', key))).toEqual(['/a~1b', '/m~0n', '/'])
  expect(pointerKeys('/a~1b/m~0n/~01')).toEqual(['a/b', 'm~n', '~1'])
  expect([parentPointer('/a/b'), parentPointer('/a'), parentPointer('')]).toEqual(['/a', '', ''])
})
