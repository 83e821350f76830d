import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import addFormats from 'ajv-formats'
import { expect, test } from 'vitest'
import { put, repository, wattproof } from './run.ts'
import { van } from './surface-library.ts'

const schema = (name: string) => JSON.parse(readFileSync(`schemas/${name}-output.schema.json`, 'utf8'))
const names = ['check', 'values', 'compare', 'surface', 'sheet', 'table', 'review']
const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true, schemas: names.map(schema) })
addFormats.default(ajv)

function matches(name: string, args: readonly string[], cwd = '.'): void {
  const { out, err } = wattproof([...args, '--format', 'json'], { cwd })
  expect(out, err).not.toBe('')
  const validate = ajv.getSchema(`https://wattproof.example/schemas/${name}-output.schema.json`)!
  const isValid = validate(JSON.parse(out))
  expect(isValid, ajv.errorsText(validate.errors)).toBe(true)
}

test.each([
  ['values', ['values', 'samples/library/panels/tern-110.panel.yaml']],
  ['values', ['values', 'samples/mistakes/misspelt-field.panel.yaml']],
  ['values', ['values', 'samples/systems/boat.system.yaml']],
  ['compare', ['compare', 'samples/library/panels', 'samples/systems/panels', 'samples/mistakes']],
  ['surface', ['compare', 'samples/systems/boat.system.yaml', '--surface', 'coachroof']],
  [
    'surface',
    [
      'compare',
      'samples/systems/van.system.yaml',
      '--surface',
      'roof',
      '--with',
      'samples/library/panels/tern-110.panel.yaml',
    ],
  ],
  ['sheet', ['sheet', 'samples/library/panels/tern-110.panel.yaml']],
  ['sheet', ['sheet', 'samples/library/panels/curlew-90.panel.yaml']],
  ['table', ['table', 'samples']],
  ['review', ['review', 'samples/systems/boat.system.yaml']],
  ['review', ['review', 'samples/systems/cabin.system.yaml']],
  ['review', ['review', 'samples/systems/measured/day-sailer.system.yaml']],
  ['review', ['review', 'samples/systems/hazards/misspelt-panel.system.yaml']],
  ['review', ['review', 'samples/systems/hazards/two-sides-of-a-roof.system.yaml']],
  ['check', ['check', 'samples/mistakes', '--show-accepted']],
])('the %s document of %s is what its schema says', (name, args) => matches(name, args))

test('a sparse record and an empty system have documents, too', () => {
  const cwd = repository({
    'a.panel.yaml': 'format: 1\nname: A\n',
    'b.system.yaml': 'format: 1\nname: B\nkind: boat\narrays: [{ id: x, panels: [{ panel: a, count: 1 }] }]\n',
  })
  matches('values', ['values', 'a.panel.yaml'], cwd)
  matches('compare', ['compare', 'a.panel.yaml'], cwd)
  matches('review', ['review', 'b.system.yaml'], cwd)
  matches('surface', ['compare', 'van.system.yaml', '--surface', 'roof', '--write', 'large'], van())
  put(cwd, { 'a.panel.yaml': 'format: 1\nname: A\nsize: { length: 1190 mm, width: 540 mm }\n' })
  matches('values', ['values', '--since', 'HEAD'], cwd)
})
