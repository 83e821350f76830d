import { spawn } from 'node:child_process'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node'

/**
 * Starts a language server on a folder. One that is no program of ours is told the schema of panels.
 *
 * @param args  program and arguments
 * @returns     its connection and process; `findings` of a document, to be asked for before what brings them is awaited
 */
export async function startServer(args, folder) {
  const child = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'ignore'] })
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  )
  let published = () => {}
  connection.onNotification('textDocument/publishDiagnostics', () => published())
  const schemas = { [pathToFileURL(resolve('schemas/panel.schema.json')).href]: '*.panel.yaml' }
  connection.onRequest('workspace/configuration', ({ items }) =>
    items.map(({ section }) => (section === 'yaml' ? { validate: true, schemas } : {})),
  )
  connection.onRequest(() => null)
  connection.onNotification(() => {})
  connection.listen()
  const uri = pathToFileURL(folder).href
  const { capabilities } = await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: uri,
    workspaceFolders: [{ uri, name: 'library' }],
    capabilities: {
      textDocument: { diagnostic: {}, publishDiagnostics: {} },
      workspace: { configuration: true, workspaceFolders: true, diagnostics: { refreshSupport: true } },
    },
  })
  await connection.sendNotification('initialized', {})
  return {
    connection,
    pid: child.pid,
    findings: (document) =>
      capabilities.diagnosticProvider === undefined
        ? new Promise((done) => (published = done))
        : connection.sendRequest('textDocument/diagnostic', { textDocument: { uri: document } }),
    stop() {
      connection.dispose()
      child.kill()
    },
  }
}
