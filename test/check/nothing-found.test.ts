import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { nothingFound } from '../../server/src/check/nothing-found.ts'
import { createWorkspace } from '../../server/src/editor/workspace.ts'
import { createLibrary } from '../../server/src/library/create.ts'

const today = '2026-11-25'
const clean = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8').replace(
  /source: sheets.*?sha256: \w+/,
  'source: https://example.com/tern.pdf',
)
const changes = [
  ['as it is', (text: string) => text],
  ['a point moved', (text: string) => text.replace('voc: 22.1 V', 'voc: 2.21 V')],
  ['a field unknown', (text: string) => `${text}colour: black\n`],
  ['an acceptance of nothing', (text: string) => `${text}# accept voc-below-vmp: as printed\n`],
  ['a sheet beside it', (text: string) => text.replace('https://example.com/', '')],
  ['another coefficient than its family', (text: string) => text.replace('voc: -0.29 %', 'voc: -0.31 %')],
  ['a name of its own and all else copied', (text: string) => text.replace('name: Tern 110', 'name: Wader 90')],
  ['a date to come', (text: string) => text.replace('quoted_on: 2026-10-04', 'quoted_on: 2027-10-04')],
] as const

test.each(changes)('what is said to be clean has no finding: %s', (_, change) => {
  const library = createLibrary()
  library.put('/a/wattproof.yaml', 'format: 1\ncurrency: USD\n')
  for (const i of [1, 2, 3])
    library.put(`/a/tern-${i}.panel.yaml`, clean.replace('Tern 110', `Tern 110 ${'ABC'[i - 1]}`))
  library.put('/a/tern-4.panel.yaml', change(clean))
  expect(isSound(library, '/a/tern-4.panel.yaml')).toBe(change(clean) === clean)
})

test('in the samples no record with a finding is said to be clean', () => {
  const library = createLibrary()
  const paths = readdirSync('samples', { recursive: true, encoding: 'utf8' }).filter((name) => /\.yaml$/.test(name))
  for (const path of paths)
    library.put(
      `/${path}`,
      readFileSync(join('samples', path), 'utf8').replace(/source: sheets.*?pdf/, 'source: https://example.com/'),
    )
  expect(paths.map((path) => isSound(library, `/${path}`)).filter(Boolean).length).toBeGreaterThan(10)
}, 60_000)

test('in an editor that stays open a record is no longer clean on the day on which its price is old', () => {
  let day = today
  const workspace = createWorkspace(() => day)
  workspace.put('/a/tern-110.panel.yaml', clean)
  expect(workspace.isClean('/a/tern-110.panel.yaml')).toBe(true)
  day = '2027-10-06'
  expect(workspace.isClean('/a/tern-110.panel.yaml')).toBe(false)
  expect(workspace.check('/a/tern-110.panel.yaml')?.findings.map(({ rule }) => rule)).toEqual(['price-stale'])
})

/** Whether a record is said to be clean; such a one has no finding. */
function isSound(library: ReturnType<typeof createLibrary>, path: string): boolean {
  const isClean = nothingFound(library, () => today)(path)
  if (isClean) {
    const { findings, accepted } = checkFile(library, path, { today })!
    expect({ path, findings, accepted }).toEqual({ path, findings: [], accepted: [] })
  }
  return isClean
}
