import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { findingsFromNotes } from '../../server/src/check/from-notes.ts'
import { createWorkspace } from '../../server/src/editor/workspace.ts'
// @ts-expect-error the calibration scripts carry no types
import { groupOf, readRatings } from '../../.scripts/calibrate/ratings.mjs'
import { halves, printed, yamlOf, type Row } from '../slips/rows.ts'
import { createLibrary } from '../../server/src/library/create.ts'

const today = '2026-11-25'
const clean = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8').replace(
  /source: sheets.*?sha256: \w+/,
  'source: https://example.com/tern.pdf, typed_by: ab',
)
const changes: readonly (readonly [what: string, change: (text: string) => string, known: readonly string[] | null])[] =
  [
    ['as it is', (text) => text, []],
    ['no weight', (text) => text.replace(/weight: 2.*\n/, ''), ['weight-missing']],
    ['no datasheet', (text) => text.replace(/datasheet: .*\n/, ''), ['datasheet-missing']],
    ['a draft from a sheet', (text) => text.replace('typed_by: ab', 'typed_by: sheet'), null],
    ['a point moved', (text) => text.replace('voc: 22.1 V', 'voc: 2.21 V'), null],
    ['a field unknown', (text) => `${text}colour: black\n`, null],
    ['an acceptance of nothing', (text) => `${text}# accept voc-below-vmp: as printed\n`, null],
    ['a sheet beside it', (text) => text.replace('https://example.com/', ''), null],
    ['another coefficient than its family', (text) => text.replace('voc: -0.29 %', 'voc: -0.31 %'), null],
    ['a name of its own and all else copied', (text) => text.replace('name: Tern 110', 'name: Wader 90'), null],
    ['a date to come', (text) => text.replace('quoted_on: 2026-10-04', 'quoted_on: 2027-10-04'), null],
  ]

test.each(changes)('findings from notes are those of a check, or are left to it: %s', (_, change, known) => {
  expect(change(clean) === clean).toBe(known?.length === 0)
  expect(rulesFromNotes(familyWith(change(clean)), '/a/tern-4.panel.yaml')).toEqual(known)
})

test('severities that are set hold for what notes say, and a record that no system uses is stock', () => {
  const library = familyWith(clean.replace(/weight: 2.*\n/, ''))
  library.put('/a/boat.system.yaml', 'format: 1\nname: Boat\nkind: boat\n')
  expect(rulesFromNotes(library, '/a/tern-4.panel.yaml')).toEqual(['weight-missing', 'unused-record'].sort())
  library.put(
    '/a/wattproof.yaml',
    'format: 1\ncurrency: USD\nseverities: { weight-missing: off, unused-record: warning }\n',
  )
  expect(rulesFromNotes(library, '/a/tern-4.panel.yaml')).toEqual(['unused-record'])
})

test('in the samples findings from notes are those of a check', () => {
  const library = createLibrary()
  const paths = readdirSync('samples', { recursive: true, encoding: 'utf8' }).filter((name) => /\.yaml$/.test(name))
  for (const path of paths)
    library.put(
      `/${path}`,
      readFileSync(join('samples', path), 'utf8').replace(/source: sheets.*?pdf/, 'source: https://example.com/'),
    )
  const known = paths.map((path) => rulesFromNotes(library, `/${path}`)).filter((one) => one !== null)
  expect(known.length).toBeGreaterThan(10)
}, 60_000)

test('in an editor that stays open a record is no longer clean on the day on which its price is old', () => {
  let day = today
  const workspace = createWorkspace(() => day)
  workspace.put('/a/tern-110.panel.yaml', clean)
  expect(workspace.foundFromNotes('/a/tern-110.panel.yaml')).toEqual([])
  day = '2027-10-06'
  expect(workspace.foundFromNotes('/a/tern-110.panel.yaml')?.map(({ rule }) => rule)).toEqual(['price-stale'])
})

test('of records as lists of open ratings give them most are known from notes, and what is found is that of a check', () => {
  const library = createLibrary()
  const rows = halves(readRatings('test/published/data/modules-open.csv').filter(groupOf) as Row[])[0].slice(0, 150)
  const paths = rows.map((row, i) => {
    library.put(`/a/row-${i}.panel.yaml`, yamlOf(row, printed(row)))
    return `/a/row-${i}.panel.yaml`
  })
  const known = paths.map((path) => rulesFromNotes(library, path))
  expect(known.filter((rules) => rules?.includes('weight-missing')).length).toBeGreaterThan(120)
}, 60_000)

/** Three siblings and a record. */
function familyWith(text: string) {
  const library = createLibrary()
  library.put('/a/wattproof.yaml', 'format: 1\ncurrency: USD\n')
  for (const i of [1, 2, 3])
    library.put(`/a/tern-${i}.panel.yaml`, clean.replace('Tern 110', `Tern 110 ${'ABC'[i - 1]}`))
  library.put('/a/tern-4.panel.yaml', text)
  return library
}

/** The rules that notes say found something, after comparison with a check. */
function rulesFromNotes(library: ReturnType<typeof createLibrary>, path: string): readonly string[] | null {
  const known = findingsFromNotes(
    library,
    () => today,
    () => true,
  )(path)
  if (!known) return null
  const { findings, accepted } = checkFile(library, path, { today })!
  expect({ path, findings: known, accepted: [] }).toEqual({ path, findings, accepted })
  return known.map(({ rule }) => rule)
}
