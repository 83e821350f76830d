import { Ajv2020 } from 'ajv/dist/2020.js'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import { complaintsOf } from '../../server/src/records/complaints.ts'
import { recordOfPath } from '../../server/src/records/kinds.ts'
import { schemas } from '../../server/src/records/schemas.generated.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { entriesOf } from '../../server/src/text/tree-queries.ts'

/** As the program sees a schema: the text of a quantity is left to others, a name may look like a number. */
function relaxed(_: string, schema: Record<string, unknown>) {
  if (String(schema?.$ref).startsWith('quantities.')) return { type: ['string', 'number'] }
  if (typeof schema?.record === 'string')
    return { type: ['string', 'object'], if: { type: 'object' }, then: { $ref: `${schema.record}.schema.json` } }
  const isText = String(schema?.type).startsWith('string') && !schema.enum && !schema.pattern
  return isText ? { type: ['string', 'number', 'boolean'] } : schema
}

const ajv = new Ajv2020({ strict: false, validateFormats: false, allErrors: true })
for (const kind of Object.keys(schemas))
  ajv.addSchema(JSON.parse(readFileSync(`schemas/${kind}.schema.json`, 'utf8'), relaxed))

const odd = ['5', '-3', '1.5', 'word', '[1, 2]', '{ a: b }']

test.each([
  'library/panels/tern-110.panel.yaml',
  'library/wattproof.yaml',
  'systems/controllers/example-mppt-30.controller.yaml',
  'systems/batteries/example-lfp-100.battery.yaml',
  'systems/climates/example-bay.climate.yaml',
  'systems/boat.system.yaml',
])('the program and a general validator complain of the same places, whatever is typed into %s', (path) => {
  const { kind } = recordOfPath(path)!
  const check = ajv.getSchema(`https://wattproof.example/schemas/${kind}.schema.json`)!
  const text = readFileSync(`samples/${path}`, 'utf8')
  const changed = entriesOf(readTree(text)).flatMap(({ entry: { keySpan, value } }) => [
    `${text.slice(0, keySpan.start)}misspelt${text.slice(keySpan.end)}`,
    ...(value ? odd.map((typed) => text.slice(0, value.span.start) + typed + text.slice(value.span.end)) : []),
  ])
  for (const one of [text, ...changed]) {
    const errors = check(parse(one)) ? [] : check.errors!
    const ours = complaintsOf(schemas[kind]!, readTree(one).root, new Set()).map(({ pointer }) => pointer)
    expect(new Set(ours), one).toEqual(new Set(errors.map(({ instancePath }) => instancePath)))
  }
  expect(changed.length).toBeGreaterThan(50)
})
