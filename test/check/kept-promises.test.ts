import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { withKeptPromises } from '../../server/src/check/kept-promises.ts'
import { plain, whole } from '../../server/src/check/sentences.ts'
import { phrase } from '../../server/src/wording/phrase.ts'
import { foundAt, type Found } from '../../server/src/findings/found.ts'
import type { Edit } from '../../server/src/text/span.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { readFile } from '../../server/src/records/read.ts'

const path = 'tern-110.panel.yaml'
const text = 'format: panel/1\nname: Tern 110  # as printed\nweight: 2.4 kg\n'
const file = readFile(path, text)!
const rule = {
  id: 'weight-odd',
  severity: 'warning',
  reason: 'It is odd.',
  source: 'common practice, no source',
  messages: { odd: 'The weight 2.4 kg is odd' },
} as const
const at = (part: string) => ({ start: text.indexOf(part), end: text.indexOf(part) + part.length })

/** A finding of a rule on the weight with one fix, and what is left of it. */
function left(edits: readonly Edit[], more: { readonly remains?: boolean; readonly text?: string } = {}): Found {
  const fix = {
    pointer: '/weight',
    text: more.text ?? '',
    why: whole(phrase`it is`),
    certainty: 'guess',
    edits,
  } as const
  const weight = { pointer: '/weight', span: at('2.4 kg') }
  const found: Found = {
    ...foundAt(rule, weight, { say: 'odd' }, { fixes: [fix] }),
    sentence: whole(phrase`The weight 2.4 kg is odd; 1.1 kg would agree.`),
  }
  const [kept] = withKeptPromises(file, [found], (after) => ({
    file: readFile(path, after)!,
    mayRemain: () => true,
    findings: () => [],
    found: () => (more.remains ? [found] : []),
  }))
  return kept!
}

test('a correction that keeps its promise is offered, with the sentence that speaks of it', () => {
  const kept = left([{ span: at('2.4'), text: '1.1' }])
  expect(kept.fixes).toHaveLength(1)
  expect(kept.sentence).toEqual(whole(phrase`The weight 2.4 kg is odd; 1.1 kg would agree.`))
})

test.each([
  { reason: 'has an inverted edit', edits: [{ span: { start: 40, end: 30 }, text: '' }] },
  { reason: 'ends behind the text', edits: [{ span: { start: 40, end: text.length + 1 }, text: '' }] },
  {
    reason: 'has edits that overlap',
    edits: [
      { span: at('2.4 kg'), text: '1 kg' },
      { span: at('kg'), text: 'lb' },
    ],
  },
  { reason: 'changes nothing', edits: [{ span: at('2.4'), text: '2.4' }] },
  { reason: 'adds a syntax error', edits: [{ span: at('2.4 kg'), text: '"2.4 kg' }] },
  { reason: 'drops a comment', edits: [{ span: at('  # as printed'), text: '' }] },
  { reason: 'is no number', edits: [{ span: at('2.4'), text: 'Infinity' }], text: 'Infinity kg' },
  { reason: 'leaves its own finding', edits: [{ span: at('2.4'), text: '1.1' }], remains: true },
])('a correction of a rule that $reason is not offered, nor spoken of', ({ edits, ...more }) => {
  const kept = left(edits, more)
  expect(kept.fixes).toEqual([])
  expect(kept.sentence).toEqual(plain(kept.claim))
})

test('beyond a number of corrections none is tried, so that a file full of them is checked in time', () => {
  const library = createLibrary()
  library.put('puffin-115.panel.yaml', text)
  const arrays = Array.from({ length: 50 }, (_, i) => `- { id: a${i}, panels: [{ panel: pufin-115, count: 1 }] }\n`)
  library.put('boat.system.yaml', `format: 1\nname: Boat\nkind: boat\narrays:\n${arrays.join('')}`)
  const { findings } = checkFile(library, 'boat.system.yaml', { today: '2026-11-25', years: 1 })!
  const misspelt = findings.filter((one) => one.rule === 'unknown-record')
  expect(misspelt).toHaveLength(50)
  expect(misspelt.flatMap(({ corrections }) => corrections)).toHaveLength(16)
})
