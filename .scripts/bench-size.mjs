// What a library of 100 to 50 000 records costs, as one table: the command line beside a bare parse of the same files, the
// server beside a bare one and beside yaml-language-server where that is installed. Medians over runs. Build first.
//   node .scripts/bench-size.mjs [N...]
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { firstFindings } from './bench/first-findings.mjs'
import { makeLibrary, makeListed } from './bench/library.mjs'
import { otherServer } from './bench/other-server.mjs'
import { cost, medians } from './bench/processes.mjs'

const named = process.argv.slice(2).map(Number)
const sizes = named.length > 0 ? named : [100, 1000, 10_000, 50_000]
/** What takes minutes is measured once. */
const runsOf = (size) => (size <= 1000 ? 5 : size <= 10_000 ? 3 : 1)
/** A mistake costs many times what a clean record does, and no list is much longer. */
const mostOfOthers = 1000

const table = new Map()
const root = mkdtempSync(join(tmpdir(), 'wattproof-size-'))
process.env.XDG_CACHE_HOME = join(root, 'cache')
for (const size of sizes) {
  const runs = runsOf(size)
  const clean = join(root, String(size))
  makeLibrary(clean, size)
  enter('runs', size, String(runs))
  const bareOf = (folder) => cost(['.scripts/bench/bare-parse.mjs', folder], runs)
  const bare = bareOf(clean)
  enter('bare parse, processor time', size, `${bare.processor.toFixed(2)} s`)
  enter('bare parse, memory', size, `${bare.memory.toFixed(0)} MB`)
  checked('clean, JSON', clean, 'json')
  checked('clean, text', clean, 'text')
  const [one, two] = ['1', '2'].map((jobs) => cost([...check(clean, 'json', jobs), '--no-cache'], runs).clock)
  enter('clean, time of one thread over that of two', size, (one / two).toFixed(2))
  if (size <= mostOfOthers) {
    const mistaken = join(root, `mistaken-${size}`)
    makeLibrary(mistaken, size, 1)
    checked('a mistake in each, JSON', mistaken, 'json')
    const listed = join(root, `listed-${size}`)
    await makeListed(listed, size)
    checked('as lists print them, JSON', listed, 'json', bareOf(listed))
  }
  await beside('server', ['dist/server.js', '--stdio'])
  const all = await firstFindings(['dist/server.js', '--stdio'], clean, true)
  enter('server, all findings (one run)', size, `${(all.all / 1000).toFixed(1)} s`)
  enter('server, memory with all findings', size, `${all.memory.toFixed(0)} MB`)
  enter('server, memory 10 s later', size, `${all.memoryLater.toFixed(0)} MB`)
  await beside('bare server', ['.scripts/bench/bare-server.mjs', '--stdio'])
  if (otherServer) await beside('yaml-language-server', [otherServer, '--stdio'])

  function checked(what, folder, format, beside = bare) {
    const { processor, memory } = cost([...check(folder, format, '1'), '--no-cache'], runs)
    enter(`${what}: check, processor time`, size, `${processor.toFixed(2)} s`)
    enter(`${what}: check over bare parse`, size, (processor / beside.processor).toFixed(2))
    enter(`${what}: check, memory`, size, `${memory.toFixed(0)} MB`)
    const keeping = cost(check(folder, format, '1'), 1).processor
    // the other format finds all of it kept
    if (format === 'json') enter(`${what}: check that keeps what it finds (one run)`, size, `${keeping.toFixed(2)} s`)
    const kept = cost(check(folder, format, '1'), runs)
    enter(`${what}: check once more, processor time`, size, `${kept.processor.toFixed(2)} s`)
    enter(`${what}: check once more over bare parse`, size, (kept.processor / beside.processor).toFixed(2))
    enter(`${what}: check once more, memory`, size, `${kept.memory.toFixed(0)} MB`)
  }

  async function beside(name, args) {
    const each = []
    for (let run = 0; run < runs; run++) each.push(await firstFindings(args, clean, false))
    const { first, memory } = medians(each)
    enter(`${name}, first findings`, size, `${first.toFixed(0)} ms`)
    enter(`${name}, memory with the first findings`, size, `${memory.toFixed(0)} MB`)
  }
}
rmSync(root, { recursive: true })
print(['', ...sizes.map((size) => `${size} records`)], table)

function check(folder, format, jobs) {
  return ['dist/wattproof.js', 'check', folder, '--jobs', jobs, '--format', format]
}

function enter(what, size, figure) {
  if (!table.has(what)) table.set(what, new Map())
  table.get(what).set(size, figure)
}

function print(heading, rows) {
  const lines = [heading, ...[...rows].map(([what, bySize]) => [what, ...sizes.map((size) => bySize.get(size) ?? '')])]
  const widths = heading.map((_, i) => Math.max(...lines.map((line) => line[i].length)))
  const [head, ...rest] = lines.map(
    (line) => `| ${line.map((text, i) => (i === 0 ? text.padEnd(widths[i]) : text.padStart(widths[i]))).join(' | ')} |`,
  )
  console.log([head, `|${widths.map((width) => '-'.repeat(width + 2)).join('|')}|`, ...rest].join('\n'))
}
