// Writes every generated file of the project from its source; `--check` writes nothing and fails where one is stale.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { fieldTables } from './generate/fields.mjs'
import { recordTypes } from './generate/types.mjs'
import { validators } from './generate/validators.mjs'
import { ruleIndexes } from './generate/rules.mjs'
import { messageCatalogue } from './generate/messages.mjs'
import { exampleMessages } from './generate/examples.mjs'
import { publishedSchema } from './generate/published.mjs'
import { fieldReference, ruleReference } from './generate/reference.mjs'

const kinds = ['panel', 'controller', 'battery', 'climate', 'system', 'library']
const schemas = Object.fromEntries(
  ['quantities', ...kinds].map((name) => [name, JSON.parse(readFileSync(`schemas/source/${name}.json`, 'utf8'))]),
)
const check = process.argv.includes('--check')
const stale = []

const tables = fieldTables(schemas)
const places = [
  ...readdirSync('server/src/rules', { withFileTypes: true })
    .filter((f) => f.isDirectory())
    .map((f) => `server/src/rules/${f.name}`),
  ...(existsSync('server/src/review/rules') ? ['server/src/review/rules'] : []),
]
write('server/src/records/schemas.generated.ts', tables.source)
write('server/src/records/records.generated.ts', recordTypes(tables.tables))
write('server/src/records/validators.generated.js', await validators(schemas))
for (const [path, text] of ruleIndexes(places)) write(path, text)
for (const kind of kinds) write(`schemas/${kind}.schema.json`, publishedSchema(kind, schemas))
write('schemas/fields.md', fieldReference(tables.tables))
write('schemas/rules.md', await ruleReference())
write('server/messages.json', await messageCatalogue('server/src'))
const languages = ['de', 'es'].map((language) => [
  language,
  JSON.parse(readFileSync(`server/l10n/bundle.l10n.${language}.json`, 'utf8')),
])
for (const [language, text] of await exampleMessages(Object.fromEntries(languages)))
  write(`server/l10n/examples.l10n.${language}.json`, text)

if (stale.length) {
  console.error(`stale, run \`npm run generate\`:\n  ${stale.join('\n  ')}`)
  process.exitCode = 1
}

function write(path, text) {
  if (existsSync(path) && readFileSync(path, 'utf8') === text) return
  if (check) stale.push(path)
  else writeFileSync(path, text)
}
