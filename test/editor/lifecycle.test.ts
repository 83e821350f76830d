import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node'
import type { Diagnostic } from 'vscode-languageserver-protocol'
import { expect, onTestFinished, test } from 'vitest'
import { folderOf, program, startServer, tern } from './client.ts'

const uri = 'file:///nowhere/tern.panel.yaml'
const hover = { textDocument: { uri }, position: { line: 4, character: 9 } }
const greeting = { processId: null, rootUri: null, capabilities: {} }
const boat = 'format: 1\nname: Boat\narrays: [{ panels: [{ panel: tern }] }]\n'

const isError = ({ severity }: Diagnostic) => severity === 1

/** The server as a process that nobody has greeted yet. */
function ungreeted() {
  const child = spawn(process.execPath, [program, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] })
  onTestFinished(() => void child.kill())
  const ended = new Promise<number | null>((done) => child.once('exit', done))
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  )
  connection.listen()
  return { connection, ended }
}

test('what comes out of turn is refused with the error that the protocol names, and the rest goes on', async () => {
  const { connection, ended } = ungreeted()
  const opened = { textDocument: { uri, languageId: 'yaml', version: 1, text: tern } }
  await connection.sendNotification('textDocument/didOpen', opened)
  await expect(connection.sendRequest('textDocument/hover', hover)).rejects.toMatchObject({ code: -32002 })
  await connection.sendRequest('initialize', greeting)
  await expect(connection.sendRequest('initialize', greeting)).rejects.toMatchObject({ code: -32600 })
  await connection.sendNotification('initialized', {})
  await connection.sendNotification('textDocument/didOpen', opened)
  expect(JSON.stringify(await connection.sendRequest('textDocument/hover', hover))).toContain('110 W')
  await connection.sendRequest('shutdown')
  await expect(connection.sendRequest('textDocument/hover', hover)).rejects.toMatchObject({ code: -32600 })
  await connection.sendNotification('exit')
  expect(await ended).toBe(0)
})

test('an editor that leaves without a shutdown ends the server, with 1', async () => {
  const { connection, ended } = ungreeted()
  await connection.sendRequest('initialize', greeting)
  await connection.sendNotification('exit')
  expect(await ended).toBe(1)
})

test('two editors on one folder do not see what the other has not saved', async () => {
  const folder = folderOf({ 'tern.panel.yaml': tern, 'boat.system.yaml': boat })
  onTestFinished(folder.dispose)
  const [one, other] = await Promise.all([1, 2].map(() => startServer({ folders: [folder.uri] })))
  const [panel, system] = [folder.uriOf('tern.panel.yaml'), folder.uriOf('boat.system.yaml')]
  const unknown = async (client: typeof one) =>
    (await client!.pull(system)).filter(({ code }) => code === 'unknown-record').length
  await one!.open(panel, tern.replace('voc: 22.1 V', 'voc: 2.21 V'))
  await one!.open(system, boat)
  await other!.open(system, boat)
  await other!.open(panel, tern)
  expect((await one!.pull(panel)).map(({ code }) => code)).toContain('voc-below-vmp')
  expect((await other!.pull(panel)).filter(isError)).toEqual([])
  folder.remove('tern.panel.yaml')
  await other!.close(panel)
  const changes = [{ uri: panel, type: 3 }]
  await Promise.all([one!, other!].map((client) => client.notify('workspace/didChangeWatchedFiles', { changes })))
  await expect.poll(() => unknown(other), { timeout: 10_000 }).toBe(1)
  expect(await unknown(one)).toBe(0)
  await Promise.all([one!.stop(), other!.stop()])
})

test('a clock that jumps by years both ways stops nothing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'clock-'))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  const jumps = `const now = Date.now; let n = 0; Date.now = () => now() + (n++ % 2 ? 1 : -1) * 3e11`
  writeFileSync(join(folder, 'jumps.cjs'), jumps)
  const client = await startServer({ args: ['--require', join(folder, 'jumps.cjs'), program, '--stdio'] })
  await client.open(uri, tern)
  for (let version = 2; version < 12; version++) {
    const text = tern.replace('voc: 22.1 V', version % 2 ? 'voc: 2.21 V' : 'voc: 22.1 V')
    await client.change(uri, version, [{ text }])
    await client.notify('textDocument/didSave', { textDocument: { uri } })
    expect((await client.pull(uri)).filter(isError)).toHaveLength(version % 2)
  }
  expect(client.log).toEqual([])
  await client.stop()
})

test('a folder whose 1000 records are swapped again and again needs no more memory for it', async () => {
  const records = (round: number) =>
    Object.fromEntries(
      Array.from({ length: 1000 }, (_, i) => [`p${i}.panel.yaml`, `${tern}notes: ${round} ${'x'.repeat(500)}\n`]),
    )
  const folder = folderOf(records(0))
  onTestFinished(folder.dispose)
  // the trees of one round alone would not fit
  const client = await startServer({ folders: [folder.uri], args: ['--max-old-space-size=64', program, '--stdio'] })
  const symbols = () => client.request<unknown[]>('workspace/symbol', { query: 'tern' })
  await expect.poll(symbols, { timeout: 30_000 }).not.toHaveLength(0)
  for (let round = 1; round <= 3; round++) {
    for (const [name, text] of Object.entries(records(round))) folder.write(name, text)
    const changes = Object.keys(records(round)).map((name) => ({ uri: folder.uriOf(name), type: 2 }))
    await client.notify('workspace/didChangeWatchedFiles', { changes })
    await client.request('workspace/diagnostic', { previousResultIds: [] })
  }
  const unchanged = Array.from({ length: 5000 }, (_, i) => ({ uri: folder.uriOf(`p${i % 1000}.panel.yaml`), type: 2 }))
  await client.notify('workspace/didChangeWatchedFiles', { changes: unchanged })
  expect(await symbols()).not.toHaveLength(0)
  expect(client.log).toEqual([])
  await client.stop()
}, 120_000)
