import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import type { Finding } from '../../server/src/findings/finding.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { marked } from '../markers.ts'
import { examples } from '../rules/fixtures.ts'
import { recordsIn, spoiled } from './any-record.ts'
import { today } from './checked.ts'

const folders = ['samples/mistakes', 'samples/library/panels', 'samples/systems']
const inFolder = (folder: string) => recordsIn(folder).map(({ path, text }) => ({ path: `${folder}/${path}`, text }))
const beside = ['panels', 'batteries', 'climates', 'controllers'].flatMap((name) => inFolder(`samples/systems/${name}`))

function findings(path: string, text: string): readonly Finding[] {
  const library = createLibrary()
  for (const one of beside) library.put(one.path, one.text)
  for (const folder of folders)
    if (path.startsWith(folder)) library.put(`${folder}/wattproof.yaml`, readOr(`${folder}/wattproof.yaml`))
  library.put(path, text)
  return checkFile(library, path, { today, years: 1 })!.findings
}

function readOr(path: string): string {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return ''
  }
}

const serious = (found: readonly Finding[]) =>
  found.filter(({ severity }) => severity === 'error' || severity === 'warning')

/** Corrections after which something serious is found of the corrected field that was not found before. */
function worse(path: string, text: string): string[] {
  const before = findings(path, text)
  return before.flatMap((one) =>
    one.corrections.flatMap((correction) => {
      const fields = [correction.pointer, ...(correction.also ?? []).map(({ pointer }) => pointer)]
      const now = serious(findings(path, applyEdits(text, correction.edits))).filter(({ pointer }) =>
        fields.includes(pointer),
      )
      const then = serious(before).filter(({ pointer }) => fields.includes(pointer))
      return now.length > then.length
        ? [`${one.rule} ${one.pointer}: ${correction.text} gives ${now.map(({ message }) => message).join(' ')}`]
        : []
    }),
  )
}

test.each([...folders, 'samples/systems/hazards'].flatMap(inFolder).concat(beside))(
  'no fix that is offered for $path makes it disagree more',
  ({ path, text }) => {
    expect(worse(path, text)).toEqual([])
  },
)

test('nor for any example of any rule', () => {
  const fixed = examples.flatMap(({ rule, title, kind, yaml }) => {
    const { source } = marked(yaml.split(/^---\n/m)[0]!)
    const path = `example.${kind}.yaml`
    return findings(path, source).length > 0 ? [{ name: `${rule}: ${title}`, path, source }] : []
  })
  expect(fixed.length).toBeGreaterThan(200)
  expect(fixed.flatMap(({ name, path, source }) => worse(path, source).map((one) => `${name}: ${one}`))).toEqual([])
})

test.each(beside.concat(inFolder('samples/library/panels')))(
  'nor for $path with one of its values typed wrongly',
  ({ path, text }) => {
    for (const wrong of spoiled(text)) expect(worse(path, wrong), wrong).toEqual([])
  },
)
