// What the search says of planted mistakes, kept so that it changes only on purpose: `npx vitest -u` writes it anew, and the
// difference is read line by line before it is committed.
import { expect, test } from 'vitest'
// @ts-expect-error the calibration scripts carry no types
import { groupOf, readRatings } from '../../.scripts/calibrate/ratings.mjs'
import { familyOf } from '../../server/src/slips/family/family.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { inOneLine } from './in-one-line.ts'
import { kinds, mistakes, unforeseen } from './mistakes.ts'
import { evidence } from './records.ts'
import { halves, printed, type Row } from './rows.ts'

const rows = halves(readRatings('test/published/data/modules-open.csv').filter(groupOf) as Row[])[0]
const typed = (row: Row) => evidence(row.sort, printed(row))

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
