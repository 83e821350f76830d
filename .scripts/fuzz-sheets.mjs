// Reads sheets of the sample library with random bytes, cuts and words of the format put in, and fails at the end where one was neither read
// nor said to be unreadable. Build first. Each seed makes one sheet.
// Usage: node .scripts/fuzz-sheets.mjs [how many, 2000] [first seed, 1]
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { load } from './load.mjs'

const [count = 2000, first = 1] = process.argv.slice(2).map(Number)
mkdirSync('.output', { recursive: true })
const { createReader, complaints, spoiled } = await load(`export { createReader } from './server/src/reader/ask.ts'
export { complaints } from './test/sheets/complaints.ts'
export { spoiled } from './test/sheets/spoiled.ts'`)

const folder = 'samples/library/sheets'
const sheets = readdirSync(folder).map((name) => readFileSync(`${folder}/${name}`))
const reader = createReader('dist/sheet-reader.js')
const began = performance.now()
const problems = new Map()
let [readable, complained, slowest] = [0, 0, 0]
for (let seed = first; seed < first + count; seed++) {
  const bytes = spoiled(sheets[seed % sheets.length], seed)
  const start = performance.now()
  const { sheet } = await reader.read(bytes)
  const took = performance.now() - start
  slowest = Math.max(slowest, took)
  if (sheet.problem === null) readable++
  else problems.set(sheet.problem, (problems.get(sheet.problem) ?? 0) + 1)
  for (const complaint of complaints(sheet, took)) {
    complained++
    console.log(`seed ${seed}: ${complaint}`)
    writeFileSync(`.output/fuzz-sheet-${seed}.pdf`, bytes)
  }
}
reader.end()
for (const [problem, times] of problems) console.log(`${times} x ${problem}`)
const seconds = ((performance.now() - began) / 1000).toFixed(0)
console.log(
  `${count} sheets of seeds ${first} to ${first + count - 1} in ${seconds} s, ${readable} were read, the slowest took ${slowest.toFixed(0)} ms, ${complained} complaints`,
)
process.exitCode = complained ? 1 : 0
