import { expect, test } from 'vitest'
import { inWords } from '../../server/src/findings/words.ts'
import { bankOf } from '../../server/src/review/bank.ts'
import { lostIn, mismatchPhrases } from '../../server/src/review/mismatch-in-words.ts'
import { mismatchOf } from '../../server/src/review/mismatch.ts'
import { yearOf } from '../../server/src/review/year.ts'
import { high, strong, system, weak } from './cases.ts'

const year = (panels: string[], series: number) =>
  yearOf(system({ panels, series }))!.months.reduce((sum, { yield_wh_day: wh }) => sum + wh, 0)

// Own calculation with two single-diode curves at STC: alternately 257.6 W (two strings at the weaker current, the stronger
// panel towards its Voc), sorted 320.0 W, 19.5 % more; the year is near it.
test('100 W of 5.56 A and 60 W of 3.33 A, 2S2P: wired alternately they give about a fifth less than sorted', () => {
  const ratio = year([strong, weak, strong, weak], 2) / year([strong, strong, weak, weak], 2)
  expect(ratio).toBeGreaterThan(0.77)
  expect(ratio).toBeLessThan(0.84)
})

// Own calculation at STC: 159.0 of 210 W at the best common voltage, a loss of 24.3 %.
test('18 V beside 36 V in parallel lose about 23 %', () => {
  const one = system({ panels: [strong, high] })
  const { loss } = mismatchOf(one, one.arrays[0]!, bankOf(one))!
  expect(loss).toBeGreaterThan(0.2)
  expect(loss).toBeLessThan(0.27)
})

test('like panels lose nothing, and what is lost is missing in the year', () => {
  const one = system({ panels: [strong, strong], series: 2 })
  expect(mismatchOf(one, one.arrays[0]!, bankOf(one))?.loss ?? 0).toBeLessThan(0.003)
  const apart = year([strong], 1) + year([high], 1)
  expect(year([strong, high], 1) / apart).toBeLessThan(0.8)
})

test('the message says how the panels are strung, and which wiring loses less', () => {
  const one = system({ panels: [strong, weak, strong, weak], series: 2 })
  const text = inWords(lostIn(one, one.arrays[0]!)!.said, mismatchPhrases)
  expect(text).toMatch(/^2S2P in list order loses (1[89]|2[01]) % of the year; /)
  expect(text).toMatch(/[14]S[14]P|like panels together, 2S2P/)
})
