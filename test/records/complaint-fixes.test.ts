import { expect, test } from 'vitest'
import { readFile } from '../../server/src/records/read.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { panel, ratings, reported } from './reported.ts'

const ratingsAs = (from: string, to: string) => panel({ stc: ratings.replace(from, to) })

test.each([
  [panel({ top: 'bifacial: Yes' }), 'bifacial: true'],
  [panel({ top: 'cells: { in_series: 36 cells }' }), 'in_series: 36 }'],
  [panel({ top: 'cells: { in_series: "36" }' }), 'in_series: 36 }'],
  [panel({ top: 'warranty: { workmanship: { years: 2 years } }' }), 'years: 2 }'],
  [panel({ top: 'warranty: { workmanship: { years: 30 months } }' }), 'years: 2.5 }'],
  [panel({ top: 'price: { quoted_on: 2026/1/5 }' }), 'quoted_on: 2026-01-05 }'],
  [panel({ top: 'certificates: IEC 61215, IEC 61730 # both' }), 'certificates: [IEC 61215, IEC 61730] # both'],
  [panel({ top: 'construction: foldable' }), 'construction: folding'],
  [panel().replace('format: 1', 'format: 2'), 'format: 1'],
  [ratingsAs('vmp', 'vmpp'), ' vmp: 18.6 V'],
])('%#: the correction leaves nothing to complain about: %s', (text, after) => {
  const [first] = readFile('a.panel.yaml', text)!.readFindings()
  const fixed = applyEdits(text, first!.corrections[0]!.edits)
  expect(fixed).toContain(after)
  expect(reported(fixed)).toEqual([])
})
