import { expect, test } from 'vitest'
import { createNotes } from '../../server/src/library/notes.ts'

test('what was not used lately is the same when it is asked for again, until it is dropped', () => {
  const notes = createNotes<{ readonly n: number; readonly text: string }>(2)
  const made = Array.from({ length: 50 }, (_, n) => ({ n: n / 7, text: `${n} °C` }))
  made.forEach((note, n) => notes.set(String(n), note))
  expect(made.map((_, n) => notes.get(String(n)))).toEqual(made)
  expect(notes.get('49')).toBe(notes.get('49'))
  notes.delete('0')
  expect([notes.has('0'), notes.get('0'), notes.get('50')]).toEqual([false, undefined, undefined])
})
