// What a library of 100, 1 000 and 10 000 records costs: the command line's processor time beside a bare parse of the same
// files, and the server's time from its start to the first findings of one record, its memory, and when all are reported.
//   node .scripts/bench-size.mjs [N...]
import { spawn, spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node'

const ms = (value) => value.toFixed(0)
const sizes = process.argv.slice(2).map(Number)
const root = mkdtempSync(join(tmpdir(), 'wattproof-size-'))
const bare = join(root, 'bare.mjs')
writeFileSync(
  bare,
  `import { readFileSync, readdirSync } from 'node:fs'
import { createRequire } from 'node:module'
const { parseDocument } = createRequire(${JSON.stringify(join(process.cwd(), 'package.json'))})('yaml')
for (const name of readdirSync(process.argv[2])) if (/yaml$/.test(name)) parseDocument(readFileSync(process.argv[2] + '/' + name, 'utf8'))
`,
)
for (const size of sizes.length > 0 ? sizes : [100, 1000, 10_000]) {
  const folder = library(size)
  const parse = processorTime([bare, folder])
  const check = processorTime(['dist/wattproof.js', 'check', folder, '--jobs', '1', '--format', 'json'])
  console.log(
    `${size} records: check ${ms(check.time)} ms of processor time, bare parse ${ms(parse.time)} ms, ${(check.time / parse.time).toFixed(2)} times; ` +
      `check held ${check.memory.toFixed(0)} MB`,
  )
  const { first, all, memory, later } = await server(folder)
  console.log(
    `${size} records: first findings after ${ms(first)} ms, all after ${ms(all)} ms, server holds ${memory.toFixed(0)} MB then, ${later.toFixed(0)} MB 10 s later`,
  )
}
rmSync(root, { recursive: true })

/** Families of eight models whose ratings differ, one in fifty with a point moved. */
function library(size) {
  const folder = join(root, String(size))
  mkdirSync(folder)
  writeFileSync(join(folder, 'wattproof.yaml'), 'format: 1\nname: Library\ncurrency: USD\n')
  const typed = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  for (let i = 0; i < size; i++) {
    const scale = 1 + (i % 8) * 0.05
    const imp = (5.92 * scale).toFixed(2)
    const isc = (6.31 * scale).toFixed(2)
    const pmax = (18.6 * Number(imp)).toFixed(1)
    const text = typed
      .replace(/name: .*/, `name: Tern ${i}`)
      .replace(/(?<=pmax: )\d+(?= W)/, pmax)
      .replace(/(?<=imp: )5\.92/, imp)
      .replace(/(?<=isc: )6\.31/, i % 50 === 7 ? isc.replace('.', '') : isc)
      .replace(/(?<=length: )\d+/, String(Math.round(1190 * scale)))
      .replace(/\n  efficiency: .*/, '')
      .replace(/\ndatasheet: .*/, '')
    writeFileSync(join(folder, `tern-${i}.panel.yaml`), text)
  }
  return folder
}

function processorTime(args) {
  const time = join(root, 'time')
  const run = spawnSync(
    'bash',
    [
      '-c',
      `TIMEFORMAT='%U %S'; { time "$0" "$@" >/dev/null 2>/dev/null; } 2>"${time}"`,
      process.execPath,
      '--require',
      report(),
      ...args,
    ],
    {
      encoding: 'utf8',
    },
  )
  if (run.error) throw run.error
  const [user, system] = readFileSync(time, 'utf8').trim().split(' ').map(Number)
  return { time: 1000 * (user + system), memory: Number(readFileSync(join(root, 'memory'), 'utf8')) / 1024 }
}

/** Writes the most memory that a process has held [KiB]. */
function report() {
  const path = join(root, 'report.cjs')
  writeFileSync(
    path,
    `process.on('exit', () => require('node:fs').writeFileSync(${JSON.stringify(join(root, 'memory'))}, String(process.resourceUsage().maxRSS)))`,
  )
  return path
}

async function server(folder) {
  const uri = pathToFileURL(join(folder, 'tern-50.panel.yaml')).href
  const text = readFileSync(join(folder, 'tern-50.panel.yaml'), 'utf8')
  const began = performance.now()
  const child = spawn(process.execPath, ['dist/server.js', '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] })
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  )
  connection.onRequest(() => null)
  connection.listen()
  await connection.sendRequest('initialize', {
    processId: process.pid,
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'library' }],
    capabilities: {
      textDocument: { diagnostic: {} },
      workspace: { workspaceFolders: true, diagnostics: { refreshSupport: true } },
    },
  })
  await connection.sendNotification('initialized', {})
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'yaml', version: 1, text },
  })
  await connection.sendRequest('textDocument/diagnostic', { textDocument: { uri } })
  const first = performance.now() - began
  await connection.sendRequest('workspace/diagnostic', { previousResultIds: [] })
  const all = performance.now() - began
  const memory = held(child.pid)
  await new Promise((resolve) => setTimeout(resolve, 10_000))
  const later = held(child.pid)
  connection.dispose()
  child.kill()
  return { first, all, memory, later }
}

/** Memory of a process [MB]; Linux alone says so. */
function held(pid) {
  return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))[1]) / 1024
}
