import { expect, test } from 'vitest'
import { createTurns } from '../../server/src/terminal/turns.ts'

/** What comes out when shares hand over letters (`a1` is letter a of share 1) and end (`-1`), in that order. */
function order(steps: string): string {
  const out: string[] = []
  const turns = createTurns<string>((one) => out.push(one))
  for (const step of steps.split(' '))
    if (step.startsWith('-')) turns.end(Number(step[1]))
    else turns.take(Number(step.at(-1)), [step])
  return out.join(' ')
}

test.each([
  ['in turn', 'a0 b0 -0 c1 -1', 'a0 b0 c1'],
  ['mixed', 'c1 a0 d1 b0 -0 e1 -1', 'a0 b0 c1 d1 e1'],
  ['the last is done first', 'e2 -2 c1 -1 a0 -0', 'a0 c1 e2'],
  ['nothing is held back once it is its turn', 'a0 -0 c1', 'a0 c1'],
  ['one that has nothing', '-1 e2 a0 -0 -2', 'a0 e2'],
])('%s: %s is handed on as %s', (_, steps, result) => expect(order(steps)).toBe(result))
