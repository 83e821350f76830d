// Checks samples with random bytes and edits, and fails at the end where a message or a correction breaks a promise.
// Every text is read, with all its corrections tried; of every fiftieth the whole check is held to the same.
// Usage: node .scripts/fuzz-records.mjs [how many, 100000] [seed, 1]
import { build } from 'esbuild'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

const [count = 100_000, seed = 1] = process.argv.slice(2).map(Number)
const folder = mkdtempSync(join(tmpdir(), 'fuzz-'))
const outfile = join(folder, 'fuzz.mjs')
const contents = `export { complaintsAbout } from './test/check/complaints-about.ts'
export { anyRecord } from './test/check/any-record.ts'
export { random } from './server/src/physics/random.ts'`
await build({
  stdin: { contents, resolveDir: process.cwd(), loader: 'ts' },
  bundle: true,
  format: 'esm',
  platform: 'node',
  alias: { yaml: './node_modules/yaml/browser/dist/index.js' },
  outfile,
  logLevel: 'error',
})
const { complaintsAbout, anyRecord, random } = await import(pathToFileURL(outfile))
rmSync(folder, { recursive: true })

let state = seed
const pick = (below) => {
  const draw = random(state)
  state = draw.state
  return Math.floor(draw.value * below)
}

const kinds = new Map()
let [slowest, done] = [0, 0]
const began = performance.now()
const summary = () =>
  `${done} records of seed ${seed} in ${((performance.now() - began) / 1000).toFixed(0)} s, the slowest ${slowest.toFixed(0)} ms, ${[...kinds.values()].reduce((a, b) => a + b, 0)} complaints`
for (; done < count; done++) {
  const { path, text } = anyRecord(pick)
  const start = performance.now()
  for (const complaint of new Set(complaintsAbout(path, text, done % 50 ? 'reading' : 'whole'))) {
    const kind = complaint.replace(/ at \S*:/, ':').slice(0, 90)
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1)
    if (kinds.get(kind) <= 2) console.log(`${complaint}\n  ${path} ${JSON.stringify(text)}`)
  }
  slowest = Math.max(slowest, performance.now() - start)
  if (done % 10_000 === 9_999) console.log(summary())
}
for (const [kind, times] of kinds) console.log(`${times} x ${kind}`)
console.log(summary())
process.exitCode = kinds.size ? 1 : 0
