import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node'
import type {
  ClientCapabilities,
  Diagnostic,
  InitializeResult,
  LogMessageParams,
  PublishDiagnosticsParams,
} from 'vscode-languageserver-protocol'

/** The server as it is shipped. */
export const program = 'dist/server.js'

/** Everything that a modern editor says of itself. */
export const full: ClientCapabilities = {
  general: { positionEncodings: ['utf-16'] },
  textDocument: {
    diagnostic: { dynamicRegistration: false, relatedDocumentSupport: false },
    publishDiagnostics: { relatedInformation: true, tagSupport: { valueSet: [1, 2] } },
    hover: { contentFormat: ['markdown', 'plaintext'] },
    completion: { completionItem: { snippetSupport: true, documentationFormat: ['markdown'] } },
    codeAction: {
      codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix', 'refactor.rewrite', 'source.fixAll'] } },
    },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    definition: { linkSupport: true },
    rename: { prepareSupport: true },
  },
  workspace: {
    workspaceFolders: true,
    configuration: true,
    didChangeConfiguration: { dynamicRegistration: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
    diagnostics: { refreshSupport: true },
    inlayHint: { refreshSupport: true },
    codeLens: { refreshSupport: true },
    workspaceEdit: {
      documentChanges: true,
      resourceOperations: ['create', 'rename', 'delete'],
      snippetEditSupport: true,
    },
    fileOperations: { willRename: true },
  },
}

/** An editor that can do nothing beyond the protocol's first version. */
export const bare: ClientCapabilities = {}

interface Start {
  readonly capabilities?: ClientCapabilities
  readonly folders?: readonly string[]
  readonly settings?: unknown
  readonly locale?: string
  readonly initializationOptions?: unknown
  readonly args?: readonly string[]
  /** The program that runs it. */
  readonly node?: string
}

export type Client = Awaited<ReturnType<typeof startServer>>

/** Starts the server as a process and greets it. All that it says unasked is kept. */
export async function startServer({
  capabilities = full,
  folders = [],
  settings = {},
  locale,
  initializationOptions,
  args = [program, '--stdio'],
  node = process.execPath,
}: Start = {}) {
  const child = spawn(node, args, { stdio: ['pipe', 'pipe', 'inherit'] })
  const connection = createMessageConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  )
  const published = new Map<string, Diagnostic[]>()
  const log: string[] = []
  const asked: { method: string; params: unknown }[] = []
  const waiting = new Set<() => void>()
  const note = () => waiting.forEach((check) => check())
  const files = new Map<string, string>()
  const given = { settings }

  connection.onNotification('textDocument/publishDiagnostics', ({ uri, diagnostics }: PublishDiagnosticsParams) => {
    published.set(uri, diagnostics)
    note()
  })
  connection.onNotification('window/logMessage', ({ message }: LogMessageParams) => void log.push(message))
  connection.onRequest((method: string, params: unknown) => {
    asked.push({ method, params })
    note()
    if (method === 'workspace/configuration') return (params as { items: unknown[] }).items.map(() => given.settings)
    if (method === 'wattproof/files') return [...files.keys()]
    if (method === 'wattproof/read') return files.get((params as { uri: string }).uri) ?? null
    return null
  })
  connection.listen()
  const ended = new Promise<never>((_, reject) => {
    child.once('exit', (code) => reject(new Error(`the server ended with ${code} before it was asked to`)))
  })
  const greeted = connection.sendRequest<InitializeResult>('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities,
    workspaceFolders: folders.map((uri) => ({ uri, name: uri })),
    ...(locale !== undefined && { locale }),
    ...(initializationOptions !== undefined && { initializationOptions }),
  })
  const result = await Promise.race([greeted, ended])
  ended.catch(() => {}) // later on it ends because it is asked to
  await connection.sendNotification('initialized', {})

  return {
    capabilities: result.capabilities,
    serverInfo: result.serverInfo,
    pid: child.pid!,
    published,
    log,
    asked,
    files,
    given,
    request: <R>(method: string, params: unknown): Promise<R> => connection.sendRequest<R>(method, params),
    notify: (method: string, params: unknown) => connection.sendNotification(method, params),
    open: (uri: string, text: string, version = 1) =>
      connection.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId: 'yaml', version, text } }),
    change: (uri: string, version: number, contentChanges: unknown[]) =>
      connection.sendNotification('textDocument/didChange', { textDocument: { uri, version }, contentChanges }),
    close: (uri: string) => connection.sendNotification('textDocument/didClose', { textDocument: { uri } }),
    /** Waits for something that the server does on its own. */
    until: (isSo: () => boolean) =>
      new Promise<void>((resolve) => {
        const check = () => {
          if (!isSo()) return
          waiting.delete(check)
          resolve()
        }
        waiting.add(check)
        check()
      }),
    pull: async (uri: string): Promise<Diagnostic[]> => {
      const { items } = await connection.sendRequest<{ items: Diagnostic[] }>('textDocument/diagnostic', {
        textDocument: { uri },
      })
      return items
    },
    async stop() {
      const ended = new Promise<number | null>((resolve) => child.once('exit', resolve))
      await connection.sendRequest('shutdown')
      await connection.sendNotification('exit')
      const code = await ended
      connection.dispose()
      return code
    },
  }
}

/** A folder of records that goes away with the test; `{ 'tern.panel.yaml': text }`. */
export function folderOf(files: Readonly<Record<string, string>>) {
  const folder = mkdtempSync(join(tmpdir(), 'records-'))
  const uri = pathToFileURL(folder).href
  const write = (name: string, text: string) => {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), text)
  }
  for (const [name, text] of Object.entries(files)) write(name, text)
  return {
    uri,
    write,
    uriOf: (name: string) => `${uri}/${name}`,
    remove: (name: string) => rmSync(join(folder, name)),
    dispose: () => rmSync(folder, { recursive: true, force: true }),
  }
}

export const tern = `format: 1
name: Tern 110
construction: flexible
stc:
  pmax: 110 W
  vmp: 18.6 V
  imp: 5.92 A
  voc: 22.1 V
  isc: 6.31 A
size: { length: 1190 mm, width: 540 mm }
`
