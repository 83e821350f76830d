// Types into open samples of a real server for a long time, and fails where it complains, gives no answer or keeps memory.
// Usage: node .scripts/soak.mjs [edits, 100000] [seed, 1]. Build first.
import { readFileSync } from 'node:fs'
import { load } from './load.mjs'

const [edits = 100_000, seed = 1] = process.argv.slice(2).map(Number)
const { startServer, random } = await load(`export { startServer } from './test/editor/client.ts'
export { random } from './server/src/physics/random.ts'`)

let state = seed
const draw = () => {
  const drawn = random(state)
  state = drawn.state
  return drawn.value
}
const samples = [
  'library/panels/tern-110.panel.yaml',
  'systems/boat.system.yaml',
  'mistakes/decimal-point-moved.panel.yaml',
]
const keys = [...'0123456789.-:# aVW', '\n']
const client = await startServer()
const files = samples.map((name) => {
  const typed = readFileSync(`samples/${name}`, 'utf8')
  return { uri: `file:///nowhere/${name}`, typed, text: typed, version: 1 }
})
for (const { uri, text } of files) await client.open(uri, text)

const memory = []
const began = performance.now()
for (let done = 1; done <= edits; done++) {
  const file = files[Math.floor(draw() * files.length)]
  // every tenth edit puts the sample back, so that most of what is typed is nearly a record
  if (draw() < 0.1) file.text = file.typed
  else {
    const at = Math.floor(draw() * file.text.length)
    const key = draw() < 0.3 ? '' : keys[Math.floor(draw() * keys.length)]
    file.text = file.text.slice(0, at) + key + file.text.slice(at + (draw() < 0.5 ? 1 : 0))
  }
  await client.change(file.uri, ++file.version, [{ text: file.text }])
  if (done % 10 === 0) await client.pull(file.uri)
  if (done % Math.ceil(edits / 10) === 0) {
    memory.push(residentMegabytes(client.pid))
    console.log(`${done} edits, ${((performance.now() - began) / done).toFixed(2)} ms each, ${memory.at(-1)} MB`)
  }
}
await client.stop()

// the first tenth warms up; what is kept of each edit would grow on through the other nine
const [warm, last] = [memory[1], memory.at(-1)]
if (client.log.length > 0) throw new Error(`the server complained ${client.log.length} times: ${client.log[0]}`)
if (last > 1.5 * warm) throw new Error(`the server grew from ${warm} to ${last} MB`)

/** Linux only. */
function residentMegabytes(pid) {
  return Math.round(Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))[1]) / 1024)
}
