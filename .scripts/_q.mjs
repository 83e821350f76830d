import { build } from 'esbuild'
import { pathToFileURL } from 'node:url'
const outfile = '/tmp/farm/sturdy/q-bundle.mjs'
await build({
  stdin: {
    contents: `export { readFile } from './server/src/records/read.ts'
export { readTree } from './server/src/text/read-tree.ts'`,
    resolveDir: process.cwd(),
    loader: 'ts',
  },
  bundle: true,
  format: 'esm',
  platform: 'node',
  alias: { yaml: './node_modules/yaml/browser/dist/index.js' },
  outfile,
  logLevel: 'error',
})
const m = await import(pathToFileURL(outfile))
const t = JSON.parse(process.argv[2])
console.log(t.length)
const f = m.readFile('a.panel.yaml', t)
console.dir(f.tree, { depth: 6 })
console.log(
  f.readFindings.map((x) => [x.rule, x.pointer, x.span, x.message, JSON.stringify(x.corrections.map((c) => c.edits))]),
)
