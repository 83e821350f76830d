import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { checkFile } from '../../server/src/check/check.ts'
import type { Finding } from '../../server/src/findings/finding.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { examples, filesOf } from '../rules/fixtures.ts'
import { marked } from '../markers.ts'
import { today } from './checked.ts'

/** All that is found in the examples of all rules, and in all samples, each with the name of its example or file. */
export const foundEverywhere = (): readonly (Finding & { readonly where: string })[] => [
  ...examples.flatMap((example) => {
    const [first, ...others] = filesOf(example)
    const library = createLibrary()
    library.put(first!.path, marked(first!.text).source)
    for (const { path, text } of others) library.put(path, text)
    return found(library, first!.path, `${example.rule}: ${example.title}`)
  }),
  ...inSamples(),
]

function inSamples() {
  const library = createLibrary()
  const paths = readdirSync('samples', { recursive: true, encoding: 'utf8' })
    .filter((name) => /[.]ya?ml$|[.]panel[.]json$/.test(name))
    .map((name) => join('samples', name))
  for (const path of paths) library.put(path, readFileSync(path, 'utf8'))
  return paths.flatMap((path) => found(library, path, path))
}

const found = (library: ReturnType<typeof createLibrary>, path: string, where: string) =>
  checkFile(library, path, { today })!.findings.map((one) => ({ ...one, where }))
