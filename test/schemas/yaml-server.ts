import { spawn } from 'node:child_process'
import { createRequire } from 'node:module'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node'
import type { Diagnostic, Hover, MarkupContent, PublishDiagnosticsParams } from 'vscode-languageserver-protocol'

const program = createRequire(import.meta.url).resolve('yaml-language-server/bin/yaml-language-server')

/** A general YAML server that takes the schema from the first line of the text, as people would use it. */
export async function yamlServer(kind: string, text: string) {
  const child = spawn(process.execPath, [program, '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] })
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  )
  const schema = pathToFileURL(resolve(`schemas/${kind}.schema.json`)).href
  const whole = `# yaml-language-server: $schema=${schema}\n${text}`
  const textDocument = { uri: `file:///records/any.${kind}.yaml` }
  const reported = new Promise<Diagnostic[]>((heard) => {
    connection.onNotification('textDocument/publishDiagnostics', (p: PublishDiagnosticsParams) => heard(p.diagnostics))
  })
  connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => ({})))
  connection.onRequest(() => null)
  connection.listen()
  const capabilities = { textDocument: { hover: { contentFormat: ['markdown'] } } }
  await connection.sendRequest('initialize', { processId: process.pid, rootUri: null, capabilities })
  await connection.sendNotification('initialized', {})
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { ...textDocument, languageId: 'yaml', version: 1, text: whole },
  })
  return {
    diagnostics: async () => (await reported).map(({ message }) => message),
    /** What a hover over the first letter of this piece of the text says. */
    hover: async (piece: string) => {
      const before = whole.slice(0, whole.indexOf(`\n${text}`) + 1 + text.indexOf(piece)).split('\n')
      const position = { line: before.length - 1, character: before.at(-1)?.length ?? 0 }
      const hover: Hover | null = await connection.sendRequest('textDocument/hover', { textDocument, position })
      return hover ? (hover.contents as MarkupContent).value : null
    },
    stop: () => {
      connection.dispose()
      child.kill()
    },
  }
}
