// How long the command line takes, process start included: the median of several runs.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const program = 'dist/wattproof.js'
const record = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const folder = mkdtempSync(join(tmpdir(), 'wattproof-bench-'))
for (const n of [200, 1000]) {
  mkdirSync(join(folder, String(n)))
  for (let i = 0; i < n; i++)
    writeFileSync(join(folder, String(n), `p${i}.panel.yaml`), record.replaceAll('Tern', `Tern ${i}`))
}
// a customer's system in a library that has grown: its records beside a thousand others
cpSync('samples/systems', join(folder, 'systems'), { recursive: true })
cpSync(join(folder, '1000'), join(folder, 'systems', 'others'), { recursive: true })

time('node itself, for comparison', ['-e', '0'], 15)
time('start and --version', [program, '--version'], 9)
const check = (...more) => [program, 'check', '--no-cache', ...more]
time('check one file', check('samples/library/panels/tern-110.panel.yaml'), 9)
time('review a system beside 1000 records', [program, 'review', join(folder, 'systems/van.system.yaml')], 15, 150)
time('check the sample library', check('samples/library'), 9)
time('check 200 records', check(join(folder, '200')), 5)
time('check 1000 records, one thread', check(join(folder, '1000')), 3)
time('check 1000 records, two threads', check(join(folder, '1000'), '--jobs', '2'), 3)
time('the same once more, from what is kept', [program, 'check', join(folder, '1000')], 3)
rmSync(folder, { recursive: true })

function time(what, args, runs, limit) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now()
    const env = { ...process.env, XDG_CACHE_HOME: join(folder, 'cache') }
    const { status, stderr } = spawnSync(process.execPath, args, { maxBuffer: 1 << 28, env })
    if (status !== 0 && status !== 1) throw new Error(String(stderr))
    return performance.now() - start
  }).sort((a, b) => a - b)
  const median = times[runs >> 1]
  const verdict = limit === undefined ? '' : `, limit ${limit} ms: ${median < limit ? 'kept' : 'MISSED'}`
  console.log(`${what.padEnd(36)} ${median.toFixed(0).padStart(6)} ms${verdict}`)
}
