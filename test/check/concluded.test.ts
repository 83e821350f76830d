import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { sampleLibrary } from './sample-library.ts'

const library = sampleLibrary()

const boat = 'samples/systems/boat.system.yaml'

function check(path: string, text: string) {
  library.put(path, text)
  return checkFile(library, path, { today: '2026-11-25' })!
}
const asTyped = new Map([boat].map((path) => [path, readFileSync(path, 'utf8')]))
const before = new Map([boat].map((path) => [path, check(path, asTyped.get(path)!)]))

test('nothing is concluded of a system from a field of which there are two versions', () => {
  const fuse = '  fuse: 100 A\n'
  const versions = (one: string, other: string) => `<<<<<<< HEAD\n${one}=======\n${other}>>>>>>> other\n`
  const rules = (lines: string) => check(boat, asTyped.get(boat)!.replace(fuse, lines)).findings.map(({ rule }) => rule)
  expect(rules('')).toContain('battery-fuse-missing')
  for (const lines of [versions(fuse, ''), versions('', fuse), versions(fuse, '  fuse: 80 A\n')])
    expect(rules(lines)).not.toContain('battery-fuse-missing')
  library.put(boat, asTyped.get(boat)!)
})

test.each([
  ['  fuse: 100 A', '  fsue: 100 A'],
  ['  in_parallel: 3', '  i_nparallel: 3'],
])('what is concluded from a field that is misspelt is not said: %j as %j', (right, typed) => {
  const { findings } = check(boat, asTyped.get(boat)!.replace(right, typed))
  library.put(boat, asTyped.get(boat)!)
  const known = new Set(before.get(boat)!.findings.map(({ message }) => message))
  expect(findings.filter(({ message }) => !known.has(message)).map(({ rule }) => rule)).toEqual(['unknown-field'])
})
