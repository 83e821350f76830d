import fc from 'fast-check'
import { expect, test } from 'vitest'
import { anyRecord } from './any-record.ts'
import { complaintsAbout } from './complaints-about.ts'

test('whatever is typed is checked, and every message and correction keeps its promise', () => {
  fc.assert(
    fc.property(fc.infiniteStream(fc.nat()), (draws) => {
      const { path, text } = anyRecord((below) => (draws.next().value as number) % Math.max(1, below))
      expect(complaintsAbout(path, text)).toEqual([])
    }),
    { numRuns: 150, seed: 3, endOnFailure: true },
  )
})
