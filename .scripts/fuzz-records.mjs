// Checks samples with random bytes and edits, and fails at the end where a message or a correction breaks a promise. Every
// text is read, with all its corrections tried; every two hundredth is checked whole. Each seed makes one text, so that a run
// goes on where another stopped and `1 SEED` repeats a failure; failures are written to .output/fuzz-failures.jsonl.
// Usage: node .scripts/fuzz-records.mjs [how many, 100000] [first seed, 1]
import { appendFileSync, mkdirSync } from 'node:fs'
import { load } from './load.mjs'

const [count = 100_000, first = 1] = process.argv.slice(2).map(Number)
const { complaintsAbout, anyRecord, random } =
  await load(`export { complaintsAbout } from './test/check/complaints-about.ts'
export { anyRecord } from './test/check/any-record.ts'
export { random } from './server/src/physics/random.ts'`)
// a tenth of the time goes into the stacks of YAML's complaints, which nobody reads
Error.stackTraceLimit = 0

const failures = '.output/fuzz-failures.jsonl'
mkdirSync('.output', { recursive: true })
const kinds = new Map()
let [slowest, slowestSeed, done] = [0, first, 0]
const began = performance.now()
const summary = () => {
  const seconds = (performance.now() - began) / 1000
  const complaints = [...kinds.values()].reduce((a, b) => a + b, 0)
  return `${done} texts of seeds ${first} to ${first + done - 1} in ${seconds.toFixed(0)} s, the slowest ${slowest.toFixed(0)} ms (seed ${slowestSeed}), ${complaints} complaints`
}

for (; done < count; done++) {
  const seed = first + done
  const { path, text } = anyRecord(drawsOf(seed))
  const start = performance.now()
  const complaints = [...new Set(complaintsOf(path, text, seed % 200 ? 'reading' : 'whole'))]
  if (complaints.length > 0) appendFileSync(failures, `${JSON.stringify({ seed, path, text, complaints })}\n`)
  for (const complaint of complaints) {
    const kind = complaint.replace(/ at \S*:/, ':').slice(0, 90)
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1)
    if (kinds.get(kind) <= 2) console.log(`seed ${seed}: ${complaint}\n  ${path} ${JSON.stringify(text)}`)
  }
  const took = performance.now() - start
  if (took > slowest) [slowest, slowestSeed] = [took, seed]
  if (done % 10_000 === 9_999) console.log(summary())
}
for (const [kind, times] of kinds) console.log(`${times} x ${kind}`)
console.log(summary())
process.exitCode = kinds.size ? 1 : 0

function drawsOf(seed) {
  let state = seed
  return (below) => {
    const draw = random(state)
    state = draw.state
    return Math.floor(draw.value * below)
  }
}

function complaintsOf(path, text, how) {
  try {
    return complaintsAbout(path, text, how)
  } catch (error) {
    return [`thrown: ${error}`]
  }
}
