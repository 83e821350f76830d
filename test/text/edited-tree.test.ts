import { expect, test } from 'vitest'
import { readEdited } from '../../server/src/text/edited-tree.ts'
import type { Span } from '../../server/src/text/span.ts'
import type { SyntaxProblem, Tree } from '../../server/src/text/tree.ts'
import { phrase } from '../../server/src/wording/phrase.ts'

const text = 'one\ntwo\nthree\nfour\n'
const placeOf = (words: string, among: string): Span => {
  const start = among.indexOf(words)
  return { start, end: start + words.length }
}

test('all places of a problem are where they were before the edits', () => {
  const problemIn = (typed: string): SyntaxProblem => {
    const fixing = (words: string) => ({
      edits: [{ span: placeOf(words, typed), text: '' }],
      why: phrase`the first kept`,
      certainty: 'guess' as const,
    })
    const spoils = { start: typed.indexOf('two'), end: placeOf('four', typed).end }
    const span = placeOf('three', typed)
    return { code: 'any', message: 'any', span, spoils, fix: fixing('two'), otherFix: fixing('four') }
  }
  const read = (typed: string): Tree => ({ text: typed, root: null, problems: [problemIn(typed)], comments: [] })
  const edits = [
    { span: placeOf('one\n', text), text: '' },
    { span: placeOf('three', text), text: 'three more' },
  ]
  const longer = (typed: string) => read(typed.replace(' more', '     '))
  expect(readEdited(text, edits, longer).problems).toEqual([problemIn(text)])
})
