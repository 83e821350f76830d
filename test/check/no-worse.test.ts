import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import type { Finding } from '../../server/src/findings/finding.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { recordOfPath } from '../../server/src/records/kinds.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { marked } from '../markers.ts'
import { examples } from '../rules/fixtures.ts'
import { spoiled } from './any-record.ts'
import { today } from './checked.ts'

/** Every record of the samples, those in JSON and the settings too. */
const samples = readdirSync('samples', { recursive: true, encoding: 'utf8' })
  .map((name) => `samples/${name.replaceAll('\\', '/')}`)
  .filter((path) => recordOfPath(path) !== null)
  .sort()
  .map((path) => ({ path, text: readFileSync(path, 'utf8') }))
const topOf = (path: string) => path.split('/').slice(0, 2).join('/')
const inLibrary = samples.filter(({ path }) => !/mistakes|hazards/.test(path))

function findings(path: string, text: string): readonly Finding[] {
  const library = createLibrary()
  // an example of a rule is checked beside the systems
  const top = path.startsWith('samples/') ? topOf(path) : 'samples/systems'
  for (const one of samples)
    if (topOf(one.path) === top && (top !== 'samples/mistakes' || one.path.endsWith('wattproof.yaml')))
      library.put(one.path, one.text)
  library.put(path, text)
  return checkFile(library, path, { today, years: 1 })!.findings
}

const serious = (found: readonly Finding[]) =>
  found.filter(({ severity }) => severity === 'error' || severity === 'warning')

/** Corrections after which more that is serious is found of the whole record than before. */
function worse(path: string, text: string): string[] {
  const before = findings(path, text)
  return before.flatMap((one) =>
    one.corrections.flatMap((correction) => {
      const now = serious(findings(path, applyEdits(text, correction.edits)))
      const then = serious(before)
      return now.length > then.length
        ? [
            `${one.rule} ${one.pointer}: ${correction.text} gives ${now
              .filter((n) => !then.some((t) => t.message === n.message))
              .map(({ message }) => message)
              .join(' ')}`,
          ]
        : []
    }),
  )
}

test('all files of the samples that are records are among them', () => {
  const kinds = new Set(samples.map(({ path }) => recordOfPath(path)!.kind))
  expect([...kinds].sort()).toEqual(['battery', 'climate', 'controller', 'library', 'panel', 'system'])
  expect(samples.length).toBeGreaterThan(90)
})

test.each(samples)('no fix that is offered for $path makes the record disagree more', ({ path, text }) => {
  expect(worse(path, text)).toEqual([])
})

test('nor for any example of any rule', () => {
  const fixed = examples.flatMap(({ rule, title, kind, yaml }) => {
    const { source } = marked(yaml.split(/^---\n/m)[0]!)
    const path = `example.${kind}.yaml`
    return findings(path, source).length > 0 ? [{ name: `${rule}: ${title}`, path, source }] : []
  })
  expect(fixed.length).toBeGreaterThan(200)
  expect(fixed.flatMap(({ name, path, source }) => worse(path, source).map((one) => `${name}: ${one}`))).toEqual([])
})

test.each(inLibrary)('nor for $path with one of its values typed wrongly', ({ path, text }) => {
  for (const wrong of spoiled(text)) expect(worse(path, wrong), wrong).toEqual([])
})
