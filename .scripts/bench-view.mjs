// How long it takes from a keystroke until the pictures of the view beside the editor are drawn anew. Build first. The
// server draws; putting the text into the page is measured in a real browser, where Chromium is installed.
import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node'

const limit = 50
const warm = 15
const cases = [
  { path: 'samples/library/panels/tern-110.panel.yaml', key: /(?<=voc: 22\.)1/ },
  { path: 'samples/systems/boat.system.yaml', key: /(?<=length: 2\.)6/ },
  { path: 'samples/systems/cabin.system.yaml', key: /(?<=shading: )5/ },
]
const browser = await chromium
  .launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox'] })
  .catch(() => null)
const page = await browser?.newPage()
await page?.setContent('<main></main>')

for (const { path, key } of cases) {
  const { server, stop } = await open(path)
  await server.rested()
  const text = readFileSync(path, 'utf8')
  const at = key.exec(text).index
  const times = []
  const inPage = []
  let before = 0
  for (let i = 0; i < 60; i++) {
    const changed = `${text.slice(0, at)}${1 + (i % 9)}${text.slice(at + 1)}`
    const drawn = await server.draw(changed)
    const inserted = (await page?.evaluate(insert, drawn.pictures)) ?? 0
    times.push(drawn.time + inserted)
    inPage.push(inserted)
    if (i === warm) before = server.cpu()
    await new Promise((done) => setTimeout(done, 20))
  }
  const sorted = times.slice(warm).sort((a, b) => a - b)
  const of = (share) => sorted[Math.floor(share * (sorted.length - 1))].toFixed(1)
  const verdict = Number(of(0.5)) <= limit ? 'within' : 'ABOVE'
  console.log(`${path}: a key to its pictures, median ${of(0.5)} ms, 9 of 10 ${of(0.9)} ms (${verdict} ${limit} ms)`)
  const spent = (server.cpu() - before) / (times.length - warm - 1)
  const paint = inPage.slice(warm).sort((a, b) => a - b)[Math.floor((inPage.length - warm) / 2)]
  console.log(
    `  of the processor the server takes ${spent.toFixed(1)} ms a key, its check included; putting it into the page takes ${paint.toFixed(1)} ms`,
  )
  stop()
}
await browser?.close()

/** Runs in the browser: as the view does it, until the next frame could be painted. */
function insert(pictures) {
  const start = performance.now()
  const figures = pictures.map(({ svg }) =>
    document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true),
  )
  document.querySelector('main').replaceChildren(...figures)
  document.body.getBoundingClientRect()
  return performance.now() - start
}

async function open(path) {
  const child = spawn(process.execPath, ['dist/server.js', '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] })
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  )
  connection.onRequest((method, params) => (method === 'workspace/configuration' ? params.items.map(() => ({})) : null))
  connection.onNotification(() => {})
  connection.listen()
  const folder = pathToFileURL(resolve('samples')).href
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: folder,
    workspaceFolders: [{ uri: folder, name: 'samples' }],
    capabilities: { textDocument: { diagnostic: {} }, workspace: { workspaceFolders: true } },
  })
  await connection.sendNotification('initialized', {})
  const uri = pathToFileURL(resolve(path)).href
  let version = 1
  const text = readFileSync(path, 'utf8')
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'yaml', version, text },
  })
  await connection.sendRequest('wattproof/pictures', { textDocument: { uri } })
  const draw = async (changed) => {
    const start = performance.now()
    const change = { textDocument: { uri, version: ++version }, contentChanges: [{ text: changed }] }
    const [, { pictures }] = await Promise.all([
      connection.sendNotification('textDocument/didChange', change),
      connection.sendRequest('wattproof/pictures', { textDocument: { uri } }),
    ])
    return { pictures, time: performance.now() - start }
  }
  /** Processor time of the server so far [ms], where the system reports it: a busy machine makes clocks say little. */
  const cpu = () => {
    const stat = `/proc/${child.pid}/stat`
    if (!existsSync(stat)) return NaN
    const [user, system] = readFileSync(stat, 'utf8').split(' ').slice(13, 15).map(Number)
    return 10 * (user + system)
  }
  /** When a folder is opened, all of its files are checked once, in the background. */
  const rested = async () => {
    for (let before = -1; before !== cpu() && !Number.isNaN(cpu());) {
      before = cpu()
      await new Promise((done) => setTimeout(done, 700))
    }
  }
  return { server: { draw, cpu, rested }, stop: () => child.kill() }
}
