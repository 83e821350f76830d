// What a library of 100, 1 000 and 10 000 records costs, clean ones and ones with a mistake each: the command line's processor
// time beside a bare parse of the same files, and the server's time from its start to the first findings of one record, its memory, and when all are reported.
//   node .scripts/bench-size.mjs [N...]
import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { makeLibrary } from './bench/library.mjs'
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
  const folder = join(root, String(size))
  makeLibrary(folder, size)
  const parse = processorTime([bare, folder])
  console.log(`${size} records: bare parse ${ms(parse.time)} ms of processor time`)
  compared('all clean', folder, 'json')
  compared('all clean', folder, 'text')
  const mistaken = join(root, `mistaken-${size}`)
  // a mistake costs many times what a clean record does
  if (size <= 1000) {
    makeLibrary(mistaken, size, 1)
    compared('each with a mistake', mistaken, 'json')
  }
  const { first, all, memory, later } = await server(folder)
  console.log(
    `  server: first findings after ${ms(first)} ms, all after ${ms(all)} ms, holds ${memory.toFixed(0)} MB then, ${later.toFixed(0)} MB 10 s later`,
  )

  function compared(what, checked, format) {
    const check = processorTime(['dist/wattproof.js', 'check', checked, '--jobs', '1', '--format', format])
    const times = (check.time / parse.time).toFixed(2)
    console.log(`  ${what}, ${format}: check ${ms(check.time)} ms, ${times} times; held ${check.memory.toFixed(0)} MB`)
  }
}
rmSync(root, { recursive: true })

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
  const path = join(
    folder,
    readdirSync(folder).find((name) => name.endsWith('.panel.yaml')),
  )
  const uri = pathToFileURL(path).href
  const text = readFileSync(path, 'utf8')
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
