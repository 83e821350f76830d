// What is said of samples and of the examples of rules, kept so that it changes only on purpose: `npx vitest run test/review/kept
// --update` writes it anew, and the difference is read line by line before it is committed.
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createLibrary } from '../../../server/src/library/create.ts'
import { marked } from '../../markers.ts'
import { examples, filesOf } from '../../rules/fixtures.ts'
import { inLines, printed } from './in-lines.ts'

const samples = readdirSync('samples', { recursive: true, encoding: 'utf8' })
  .map((name) => `samples/${name}`)
  .filter((path) => /[.](ya?ml|json)$/.test(path) && !path.includes('/mistakes/'))
const library = createLibrary()
for (const path of samples) library.put(path, readFileSync(path, 'utf8'))

const systems = samples.filter((path) => path.endsWith('.system.yaml')).sort()

test.each(systems)('%s', async (path) => {
  const name = path.replace(/^.*[/]|[.]system[.]yaml$/g, '')
  const isFull = !path.includes('hazards')
  const lines = [...(isFull ? printed(library, path) : []), ...inLines(library, path, isFull)]
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`samples/${name}.txt`)
})

const ofSystems = examples.filter(({ kind }) => kind === 'system')
const rules = [...new Set(ofSystems.map(({ rule }) => rule))]

test.each(rules)('%s', async (rule) => {
  const seen = new Set<string>()
  const said = ofSystems
    .filter((one) => one.rule === rule)
    .flatMap((example) => {
      const files = filesOf(example)
      const own = createLibrary()
      for (const [i, { path, text }] of files.entries()) own.put(path, i === 0 ? marked(text).source : text)
      // of a further example what the ones before it do not say
      const lines = inLines(own, files[0]!.path, false).filter((line) => !seen.has(line))
      for (const line of lines) seen.add(line)
      return [`# ${example.title}`, ...lines]
    })
  await expect(`${said.join('\n')}\n`).toMatchFileSnapshot(`rules/${rule}.txt`)
})
