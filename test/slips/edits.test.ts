import { expect, test } from 'vitest'
import { edits } from '../../server/src/slips/typos/edits.ts'

test.each([
  { kind: 'digits swapped', typed: '16.8', meant: '18.6', decimals: 1 },
  { kind: 'digit dropped', typed: '5.2', meant: '5.92', decimals: 2 },
  { kind: 'digit dropped', typed: '0.92', meant: '5.92', decimals: 2 },
  { kind: 'digit doubled', typed: '1110', meant: '110', decimals: 0 },
  { kind: 'neighbouring key', typed: '6.92', meant: '5.92', decimals: 2 },
  { kind: 'point dropped', typed: '221', meant: '22.1', decimals: 1 },
  { kind: 'point dropped', typed: '-38', meant: '-0.38', decimals: 2 },
  { kind: 'point moved', typed: '95', meant: '9.50', decimals: 2 },
  { kind: 'point moved', typed: '0.592', meant: '5.92', decimals: 2 },
  { kind: 'sign lost', typed: '0.38', meant: '-0.38', decimals: 2 },
])('$kind: $typed may have been $meant', ({ kind, typed, meant, decimals }) => {
  expect(
    edits(typed, decimals, 0)
      .filter(({ number }) => number === meant)
      .map((e) => e.kind),
  ).toContain(kind)
})

test('no edit leaves a number as it is or writes it in a way that nobody prints', () => {
  for (const { number } of edits('20.05', 2, 1)) {
    expect(number).not.toBe('20.05')
    expect(number).toMatch(/^-?(0|[1-9]\d*)(\.\d+)?$/)
  }
})
