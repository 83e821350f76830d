import { Ajv2020 } from 'ajv/dist/2020.js'
import { readFileSync, readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { parse } from 'yaml'

// as any other tool would: the schemas alone, nothing of ours beside them
const ajv = new Ajv2020({ strict: false, validateFormats: false, allErrors: true })
for (const name of readdirSync('schemas').filter((file) => file.endsWith('.schema.json'))) {
  ajv.addSchema(JSON.parse(readFileSync(`schemas/${name}`, 'utf8')))
}
const validate = (kind: string, path: string) => {
  const check = ajv.getSchema(`https://wattproof.example/schemas/${kind}.schema.json`)
  return check?.(parse(readFileSync(path, 'utf8'))) ? [] : (check?.errors ?? ['no schema'])
}

test.each(readdirSync('samples/library/panels'))('%s is valid to a general validator', (name) => {
  expect(validate('panel', `samples/library/panels/${name}`)).toEqual([])
})

test('so are the settings', () => expect(validate('library', 'samples/library/wattproof.yaml')).toEqual([]))

test.each(['wrong-unit', 'misspelt-field'])('a general validator sees %s too', (name) => {
  expect(validate('panel', `samples/mistakes/${name}.panel.yaml`)).not.toEqual([])
})
