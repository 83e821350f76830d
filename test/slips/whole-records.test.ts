// What a check says of whole records with one mistake, kept so that it changes only on purpose: `npx vitest run
// test/slips/whole-records.test.ts --update` writes it anew, and the difference is read line by line before it is committed.
import { expect, test } from 'vitest'
// @ts-expect-error the calibration scripts carry no types
import { groupOf, readRatings } from '../../.scripts/calibrate/ratings.mjs'
import { checkFile } from '../../server/src/check/check.ts'
import { relativesOf } from '../../server/src/check/family.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { findSlip } from '../../server/src/slips/find-slip.ts'
import { flexibles } from './flexible.ts'
import { inOneLine } from './in-one-line.ts'
import { kinds, mistakes, unforeseen, type Made } from './mistakes.ts'
import { halves, printed, yamlOf, type Row } from './rows.ts'
import { unplanned, unplannedOf } from './unplanned.ts'

const glass = halves(readRatings('test/published/data/modules-open.csv').filter(groupOf) as Row[])[1]
const flexible = [...flexibles(40, 71), ...flexibles(40, 71, 'laid out')]

/** The verdict of the search and what is reported, of a record alone and beside one of the same panel typed right. */
function said(row: Row, texts: Made['texts'], seed: string): string[] {
  return [[], ['other.panel.yaml']].flatMap((others) => {
    const library = createLibrary()
    library.put('own.panel.yaml', yamlOf(row, texts))
    for (const path of others) library.put(path, yamlOf(row, printed(row)))
    const { evidence, family } = relativesOf(library, library.file('own.panel.yaml') as ReadFile<'panel'>)
    const { findings } = checkFile(library, 'own.panel.yaml', { today: '2026-11-25' })!
    return [
      `${seed}${others.length > 0 ? ' beside the same typed right' : ''}: ${inOneLine(findSlip(evidence, family))}`,
      ...findings
        .filter(({ severity }) => severity !== 'hint')
        .map(({ severity, rule, message, corrections }) =>
          [`  ${severity} ${rule} ${message}`, ...corrections.map(({ text, why }) => `${text}, ${why}`)].join(' | '),
        ),
    ]
  })
}

test.each([...Object.keys(unplanned), ...kinds, ...unforeseen])('%s', async (kind) => {
  const made = (rows: readonly Row[]) =>
    kind in unplanned ? unplannedOf(rows, kind, 3, 57) : mistakes(rows, kind, 3, 57)
  const lines = [...made(glass), ...made(flexible)].flatMap(({ row, texts, pointers }) => {
    const typed = pointers.map((pointer) => `${pointer} ${texts[pointer]} for ${printed(row)[pointer] ?? 'nothing'}`)
    return said(row, texts, typed.join(', '))
  })
  expect(lines.length).toBeGreaterThan(3)
  const name = kind.replaceAll(/[^A-Za-z0-9]+/g, '-')
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`whole-records/${name}.txt`)
})
