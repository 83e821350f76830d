import { readFileSync } from 'node:fs'

/** The packages whose code the bundles hold, as folders: read off esbuild's metafiles and the head of the compiled validators. */
export function packagesIn(metafiles) {
  const inputs = metafiles.flatMap(({ outputs }) => Object.values(outputs).flatMap((output) => usedInputs(output)))
  const folders = inputs.flatMap((path) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0] ?? [])
  const validators = readFileSync('server/src/records/validators.generated.js', 'utf8')
  const inValidators = /^\/\/ Holds code of (.+)\.$/m.exec(validators)?.[1].split(', ') ?? []
  return [...new Set([...folders, ...inValidators.map((name) => `node_modules/${name}`)])].sort()
}

/** What is left of a module when all of it was shaken out needs no notice. */
const usedInputs = ({ inputs }) => Object.keys(inputs).filter((path) => 0 < inputs[path].bytesInOutput)
