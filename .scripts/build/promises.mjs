// What the README promises about the programs, checked on the bundles themselves.
import { readFileSync } from 'node:fs'

const network = ['http', 'https', 'http2', 'tls', 'dgram', 'dns']
const entryLimit = 10_000

/** A sentence for every promise that a bundle breaks. */
export function broken(metafiles) {
  return metafiles.flatMap(({ outputs, inputs }) =>
    Object.entries(outputs).flatMap(([path, { bytes, imports }]) => {
      const text = readFileSync(path, 'utf8')
      const bare = imports.map((i) => i.path.replace(/^node:/, ''))
      return [
        ...bare
          .filter((name) => network.includes(name))
          .map((name) => `${path} imports ${name}: no program of ours uses the network`),
        ...(/(?<![.\w$]|async )fetch\((?![^()]*(?:\([^()]*\)[^()]*)*\)\{)|\bXMLHttpRequest\b|\bWebSocket\(/.test(text)
          ? [`${path} holds a network call`]
          : []),
        ...(/\bnew Function\b|\beval\(/.test(text)
          ? [`${path} makes code at run time, which a browser may forbid`]
          : []),
        ...(path.startsWith('dist/web/') && bare.some((name) => name !== 'vscode')
          ? [`${path} imports ${bare}: a browser has no such module`]
          : []),
        ...(path === 'dist/client.js' && bytes > entryLimit
          ? [`${path} has ${bytes} bytes, above ${entryLimit}: it is read in every YAML window`]
          : []),
        ...(Object.keys(inputs).some((name) => /node_modules\/ajv\//.test(name) && !/ajv\/dist\/runtime\//.test(name))
          ? [`${path} holds the schema compiler`]
          : []),
      ]
    }),
  )
}
