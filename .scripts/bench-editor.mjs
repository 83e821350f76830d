// How long the language server takes, from its start and from a keystroke, until the findings are there. Build first.
// Where yaml-language-server is installed the same file is opened in that too, with the same schema: see bench/other-server.mjs.
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { startServer } from './bench/language-server.mjs'
import { otherServer } from './bench/other-server.mjs'

const folder = resolve('samples/library')
const record = 'samples/library/panels/tern-110.panel.yaml'
const uri = pathToFileURL(resolve(record)).href
const text = readFileSync(record, 'utf8')
const slip = text.replace(/voc: 22\.1 V/, 'voc: 2.21 V')
const limits = { start: 250, key: 10 }

const wattproof = ['dist/server.js', '--stdio']
const bare = Array.from({ length: 9 }, () => {
  const start = performance.now()
  spawnSync(process.execPath, ['-e', '0'])
  return performance.now() - start
})
print('node itself, for comparison', bare)
await figures('wattproof', wattproof, true, 15)
if (otherServer) await figures('yaml-language-server', [otherServer, '--stdio'], false, 5)
else console.log('yaml-language-server is not installed')

async function figures(name, args, isOurs, runs) {
  const starts = []
  for (let run = 0; run < runs; run++) {
    const start = performance.now()
    const server = await open(args, text)
    starts.push(performance.now() - start)
    server.kill()
  }
  print(`${name}: start to first findings`, starts, isOurs ? limits.start : undefined)

  const server = await open(args, text)
  print(
    `${name}: keys in a finished record`,
    await edits(server, text, isOurs ? 300 : 20),
    isOurs ? limits.key : undefined,
  )
  if (isOurs) {
    print(`${name}: keys beside a slip of typing`, await edits(server, slip, 300), limits.key)
    print(`${name}: keys of a record being typed`, await typing(server, text), limits.key)
  }
  server.kill()
}

/** A digit and a letter change in turn, the file stays as long as it is. */
async function edits(server, base, count) {
  await server.replace(base)
  const places = [...base.matchAll(/(?<=pmax: )\d+|(?<=name: )\w/g)].map((found) => found.index)
  const times = []
  for (let i = 0; i < count; i++) {
    const at = places[i % places.length]
    const typed = /\d/.test(base[at]) ? String(1 + (i % 9)) : 'abcdefghi'[i % 9]
    times.push(await server.key(base.slice(0, at), typed, 1))
    await server.replace(base)
  }
  return times.slice(10)
}

/** The whole record from its first letter to its last. */
async function typing(server, base) {
  await server.replace('')
  const times = []
  for (let at = 0; at < base.length; at++) times.push(await server.key(base.slice(0, at), base[at], 0))
  return times
}

async function open(args, content) {
  const { connection, findings, stop } = await startServer(args, folder)
  let version = 1
  const send = async (contentChanges) => {
    const start = performance.now()
    const changed = { textDocument: { uri, version: ++version }, contentChanges }
    await Promise.all([connection.sendNotification('textDocument/didChange', changed), findings(uri)])
    return performance.now() - start
  }
  const opened = { textDocument: { uri, languageId: 'yaml', version, text: content } }
  await Promise.all([connection.sendNotification('textDocument/didOpen', opened), findings(uri)])
  return {
    replace: (all) => send([{ text: all }]),
    key: (before, typed, replaced) => {
      const lines = before.split('\n')
      const start = { line: lines.length - 1, character: lines.at(-1).length }
      return send([{ range: { start, end: { ...start, character: start.character + replaced } }, text: typed }])
    },
    kill: stop,
  }
}

function print(what, times, limit) {
  const sorted = [...times].sort((a, b) => a - b)
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))].toFixed(1).padStart(7)
  const verdict = limit === undefined ? '' : ` limit ${limit} ms: ${Number(at(0.95)) < limit ? 'kept' : 'MISSED'}`
  console.log(`${what.padEnd(46)} median ${at(0.5)} ms, 95 % ${at(0.95)} ms${verdict}`)
}
