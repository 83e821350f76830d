import Ajv from 'ajv/dist/2020.js'
import standaloneCode from 'ajv/dist/standalone/index.js'
import { build } from 'esbuild'

/**
 * JSON Schemas -> one module of compiled validators. The text of a quantity is left to the quantity reader, which can
 * say more about it than a pattern can; ajv checks everything around it.
 */
export async function validators(schemas) {
  const { quantities, ...kinds } = schemas
  const ajv = new Ajv({
    allErrors: true,
    strict: true,
    allowUnionTypes: true,
    messages: false,
    code: { source: true, esm: true },
    inlineRefs: true,
  })
  ajv.addVocabulary(['unit', 'symbol', 'costs', 'enumDescriptions', 'patternErrorMessage', 'record'])
  for (const [kind, schema] of Object.entries(kinds)) ajv.addSchema(structure(schema), kind)
  const code = standaloneCode.default(ajv, Object.fromEntries(Object.keys(kinds).map((k) => [k, k])))
  // ajv's few run-time helpers come in by `require`; bundling leaves one plain module
  const bundle = await build({
    stdin: { contents: code, resolveDir: '.', loader: 'js' },
    bundle: true,
    format: 'esm',
    minify: true,
    write: false,
    legalComments: 'none',
    metafile: true,
  })
  // nobody reads where in the schema a complaint comes from, which is a fifth of the code
  const lean = bundle.outputFiles[0].text.replace(/schemaPath:"[^"]*",/g, '')
  const holds = Object.keys(bundle.metafile.inputs).flatMap((path) => /node_modules\/([^/]+)/.exec(path)?.[1] ?? [])
  return [
    '// Generated from schemas/source/ by `npm run generate`; do not edit.',
    ...(holds.length ? [`// Holds code of ${[...new Set(holds)].sort().join(', ')}.`] : []),
    lean,
  ].join('\n')
}

function structure(schema) {
  if (Array.isArray(schema)) return schema.map(structure)
  if (schema === null || typeof schema !== 'object') return schema
  if (schema.$ref?.startsWith('quantities.json#')) return { type: ['string', 'number'] }
  if (schema.record) return { type: ['string', 'object'] }
  const { format, title, description, examples, enumDescriptions, $id, $schema, ...rest } = schema
  return Object.fromEntries(
    Object.entries(rest).map(([k, v]) => [k, k === 'properties' ? mapValues(v, structure) : structure(v)]),
  )
}
const mapValues = (o, f) => Object.fromEntries(Object.entries(o).map(([k, v]) => [k, f(v)]))
