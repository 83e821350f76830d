// How long the command line takes, process start included: the median of several runs.
import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const record = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const folder = mkdtempSync(join(tmpdir(), 'wattproof-bench-'))
for (const n of [200, 1000]) {
  mkdirSync(join(folder, String(n)))
  for (let i = 0; i < n; i++)
    writeFileSync(join(folder, String(n), `p${i}.panel.yaml`), record.replaceAll('Tern', `Tern ${i}`))
}

time('start and --version', ['--version'], 9)
time('check one file', ['check', 'samples/library/panels/tern-110.panel.yaml'], 9)
time('check the sample library', ['check', 'samples/library'], 9)
time('check 200 records', ['check', join(folder, '200')], 5)
time('check 1000 records, one thread', ['check', join(folder, '1000'), '--jobs', '1'], 3)
time('check 1000 records, two threads', ['check', join(folder, '1000'), '--jobs', '2'], 3)
rmSync(folder, { recursive: true })

function time(what, args, runs) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now()
    const { status, stderr } = spawnSync(process.execPath, ['dist/wattproof.js', ...args], { maxBuffer: 1 << 28 })
    if (status !== 0 && status !== 1) throw new Error(String(stderr))
    return performance.now() - start
  }).sort((a, b) => a - b)
  console.log(`${what.padEnd(36)} ${times[runs >> 1].toFixed(0).padStart(6)} ms`)
}
