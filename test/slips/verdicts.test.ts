// What the search says of planted mistakes, kept so that it changes only on purpose: `npx vitest -u` writes it anew, and the
// difference is read line by line before it is committed.
import { expect, test } from 'vitest'
// @ts-expect-error the calibration scripts carry no types
import { groupOf, readRatings } from '../../.scripts/calibrate/ratings.mjs'
import { inWords } from '../../server/src/findings/words.ts'
import { familyOf } from '../../server/src/slips/family/family.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { reasons } from '../../server/src/slips/typos/reasons.ts'
import type { SlipVerdict } from '../../server/src/slips/verdict.ts'
import { kinds, mistakes, unforeseen } from './mistakes.ts'
import { evidence } from './records.ts'
import { halves, printed, type Row } from './rows.ts'

const rows = halves(readRatings('test/published/data/modules-open.csv').filter(groupOf) as Row[])[0]
const typed = (row: Row) => evidence(row.sort, printed(row))

const inOneLine = (verdict: SlipVerdict) => {
  if (verdict.kind === 'consistent') return 'consistent'
  const odds = verdict.odds.toFixed(2)
  if (verdict.kind === 'disagree') return `${verdict.pointers.join()} disagree, odds ${odds}`
  const others = verdict.alternatives.map(
    ({ pointer, text, certainty }) => `${pointer} ${text} ${certainty.toFixed(2)}`,
  )
  const { pointer, text, why, certainty, siblings } = verdict
  const first = `${pointer} ${text} (${inWords(why, reasons)}) ${certainty.toFixed(2)}, odds ${odds}, ${siblings.length} siblings`
  return [first, ...others].join(' | ')
}

test.each([...kinds, ...unforeseen])('%s', async (kind) => {
  const lines = mistakes(rows, kind, 8, 29).flatMap(({ row, texts }) => {
    const own = evidence(row.sort, texts)
    const others = rows.filter((one) => one !== row && row['family'] && one['family'] === row['family']).map(typed)
    const family = familyOf(own, others)
    return [
      `${row['id']} alone: ${inOneLine(findSlip(own))}`,
      ...(family ? [`${row['id']} in its family: ${inOneLine(findSlip(own, family))}`] : []),
    ]
  })
  expect(lines.length).toBeGreaterThan(7)
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`verdicts/${kind.replaceAll(' ', '-')}.txt`)
})
