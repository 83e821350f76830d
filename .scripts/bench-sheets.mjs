// What it costs to check a hundred records beside their sheets: with nothing kept, and with what the cache keeps. Build first.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const folder = mkdtempSync(join(tmpdir(), 'wattproof-bench-'))
const library = join(folder, 'library')
const from = 'samples/library'
const records = readdirSync(`${from}/panels`).filter((name) => name.endsWith('.yaml'))
cpSync(`${from}/wattproof.yaml`, join(library, 'wattproof.yaml'))
for (const name of ['panels', 'sheets']) mkdirSync(join(library, name))
for (let i = 0; i < 100; i++) {
  const name = records[i % records.length]
  const record = readFileSync(`${from}/panels/${name}`, 'utf8').replace(/, sha256: \w+/, '')
  const [, sheet] = /source: (sheets\/[\w-]+\.pdf)/.exec(record)
  // a comment behind the end makes it another file with the same pages
  const bytes = Buffer.concat([readFileSync(`${from}/${sheet}`), Buffer.from(`\n% ${i}\n`)])
  writeFileSync(join(library, `sheets/s-${i}.pdf`), bytes)
  writeFileSync(join(library, `panels/p-${i}.panel.yaml`), record.replace(sheet, `sheets/s-${i}.pdf`))
}
for (const [what, limit] of [
  ['cold', 20],
  ['warm', 1],
  ['warm', 1],
]) {
  // prettier-ignore
  const start = performance.now()
  const env = { ...process.env, XDG_CACHE_HOME: join(folder, 'cache') }
  const { status, stderr } = spawnSync(process.execPath, ['dist/wattproof.js', 'check', library], { env })
  if (status !== 0) throw new Error(String(stderr))
  const seconds = (performance.now() - start) / 1000
  console.log(
    `100 records and their sheets, ${what}: ${seconds.toFixed(1)} s, limit ${limit} s: ${seconds < limit ? 'kept' : 'MISSED'}`,
  )
}
rmSync(folder, { recursive: true })
