import { spawn } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node'

/**
 * Starts a language server on a folder and opens one of its records.
 *
 * @param later  whether to wait for the findings of all records and then 10 s more
 * @returns      ms until the first findings, until all, and memory then and 10 s later [MB]; what is not waited for is NaN
 */
export async function firstFindings(args, folder, later) {
  const path = join(
    folder,
    readdirSync(folder).find((name) => name.endsWith('.panel.yaml')),
  )
  const uri = pathToFileURL(path).href
  const began = performance.now()
  const child = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'ignore'] })
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  )
  const published = new Promise((done) => connection.onNotification('textDocument/publishDiagnostics', done))
  const schemas = { [pathToFileURL(resolve('schemas/panel.schema.json')).href]: '*.panel.yaml' }
  connection.onRequest('workspace/configuration', ({ items }) =>
    items.map(({ section }) => (section === 'yaml' ? { validate: true, schemas } : {})),
  )
  connection.onRequest(() => null)
  connection.onNotification(() => {})
  connection.listen()
  const { capabilities } = await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: pathToFileURL(folder).href,
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'library' }],
    capabilities: {
      textDocument: { diagnostic: {}, publishDiagnostics: {} },
      workspace: { configuration: true, workspaceFolders: true, diagnostics: { refreshSupport: true } },
    },
  })
  await connection.sendNotification('initialized', {})
  const textDocument = { uri, languageId: 'yaml', version: 1, text: readFileSync(path, 'utf8') }
  await connection.sendNotification('textDocument/didOpen', { textDocument })
  const isPulled = capabilities.diagnosticProvider !== undefined
  await (isPulled ? connection.sendRequest('textDocument/diagnostic', { textDocument: { uri } }) : published)
  const first = performance.now() - began
  let all = NaN
  if (later) {
    await connection.sendRequest('workspace/diagnostic', { previousResultIds: [] })
    all = performance.now() - began
  }
  const memory = held(child.pid)
  if (later) await new Promise((done) => setTimeout(done, 10_000))
  const memoryLater = later ? held(child.pid) : NaN
  connection.dispose()
  child.kill()
  return { first, all, memory, memoryLater }
}

/** Memory of a process [MB]; Linux alone says so. */
function held(pid) {
  return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))[1]) / 1024
}
