import { Ajv2020 } from 'ajv/dist/2020.js'
import addFormats from 'ajv-formats'
import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { kinds, samples } from './samples.ts'

type Schema = Record<string, unknown>
const schemaOf = (kind: string) => JSON.parse(readFileSync(`schemas/${kind}.schema.json`, 'utf8')) as Schema

/** As any other tool would: one schema alone, every check that the validator has, nothing of ours beside it. */
function validator(schema: Schema) {
  const ajv = new Ajv2020({ strict: true, allErrors: true })
  addFormats.default(ajv)
  return ajv.compile(schema)
}
const validators = Object.fromEntries(kinds.map((kind) => [kind, validator(schemaOf(kind))]))
const complaints = (kind: string, path: string) => {
  const check = validators[kind] ?? expect.unreachable(kind)
  return check(parse(readFileSync(path, 'utf8'))) ? [] : check.errors?.map((e) => `${e.instancePath} ${e.message}`)
}

test('there are samples of every kind', () => {
  expect(new Set(samples.map((sample) => sample.kind))).toEqual(new Set(kinds))
})

test.each(samples)('$path is valid to a general validator', ({ path, kind }) => {
  expect(complaints(kind, path)).toEqual([])
})

test.each(['wrong-unit', 'misspelt-field'])('a general validator sees %s too', (name) => {
  expect(complaints('panel', `samples/mistakes/${name}.panel.yaml`)).not.toEqual([])
})

test('a record that stands in a system is compared with its schema', () => {
  const check = validators.system ?? expect.unreachable()
  const input = { max_voltage: '100 V', max_short_circuit_current: '20 A' }
  const output = { max_current: '15 A', battery_voltages: ['12 V'] }
  const withController = (controller: unknown) => check({ ...system, arrays: [{ ...array, controller }] })
  const { arrays, ...system } = parse(readFileSync('samples/systems/van.system.yaml', 'utf8')) as { arrays: object[] }
  const [array] = arrays
  expect(withController({ type: 'mppt', input, output })).toBe(true)
  expect(withController({ type: 'mppt', input: { ...input, max_voltage: '100 A' }, output })).toBe(false)
})

describe.each(readdirSync('schemas').filter((name) => name.endsWith('.schema.json')))('%s', (name) => {
  const schema = JSON.parse(readFileSync(`schemas/${name}`, 'utf8')) as Schema
  const nodes = [...subschemas(schema)]
  const withDefinitions = (node: Schema) => ('oneOf' in node && schema.$defs ? { ...node, $defs: schema.$defs } : node)

  test('refers to no other file', () => {
    const refs = nodes.flatMap((node) => (node.$ref === undefined ? [] : [node.$ref]))
    expect(refs.filter((ref) => !String(ref).startsWith('#/$defs/'))).toEqual([])
  })

  test('has no keyword but those of draft 2020-12, and no format', () => {
    const known = `$schema $id $comment $ref $defs title description examples type enum const pattern minLength minimum maximum
      minItems maxItems items properties required additionalProperties oneOf`.split(/\s+/)
    expect(nodes.flatMap(Object.keys).filter((keyword) => !known.includes(keyword))).toEqual([])
  })

  test('accepts its own examples', () => {
    for (const node of nodes)
      for (const example of (node.examples ?? []) as unknown[])
        expect(validator(withDefinitions(node))(example), `${String(node.title)}: ${String(example)}`).toBe(true)
  })
})

function* subschemas(node: unknown): Generator<Schema> {
  if (typeof node !== 'object' || node === null) return
  const schema = node as Schema
  yield schema
  for (const word of ['properties', '$defs'])
    for (const inner of Object.values((schema[word] as Schema | undefined) ?? {})) yield* subschemas(inner)
  for (const inner of [schema.items, schema.additionalProperties]) yield* subschemas(inner)
  for (const inner of (schema.oneOf as unknown[] | undefined) ?? []) yield* subschemas(inner)
}
