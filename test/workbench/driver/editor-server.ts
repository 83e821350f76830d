import { execFile, spawn, type ChildProcess } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { place } from '../install/place.mjs'
import { printed } from './processes.ts'
import { settings } from './settings.ts'

/** The server half of the workbench: it hosts extensions and gives the page to the browser. */
export interface EditorServer {
  readonly process: ChildProcess
  /** Settings, logs, installed extensions and sockets of this server alone. */
  readonly data: string
  readonly address: string
}

export interface Conditions {
  readonly environment?: Record<string, string>
  /** The window asks whether the folder is trusted, and nobody says so. */
  readonly restricted?: boolean
  /** Beside those of every window. */
  readonly settings?: Record<string, unknown>
}

const trust = 'security.workspace.trust.enabled'
const program = [join(place, 'node', 'node'), join(place, 'vscode', 'out', 'server-main.js')] as const

/** Starts a server with these extensions installed in it, and no others but those that the editor brings along. */
export async function startEditorServer(
  vsix: readonly string[],
  { environment = {}, restricted = false, settings: more = {} }: Conditions = {},
): Promise<EditorServer> {
  const data = mkdtempSync(join(tmpdir(), 'wattproof-editor-'))
  const places = ['--server-data-dir', data, '--extensions-dir', join(data, 'extensions')]
  // no gallery to ask, and sockets where no other server has its own
  const env = { ...process.env, EXTENSIONS_GALLERY: '{}', TMPDIR: data, XDG_RUNTIME_DIR: data, ...environment }
  mkdirSync(join(data, 'data', 'User'), { recursive: true })
  writeFileSync(
    join(data, 'data', 'User', 'settings.json'),
    JSON.stringify({ ...settings, ...more, [trust]: restricted }, null, 2),
  )
  for (const path of vsix)
    await promisify(execFile)(program[0], [program[1], '--install-extension', path, ...places], { env })

  const child = spawn(
    program[0],
    [
      program[1],
      ...['--host', '127.0.0.1', '--port', '0', '--telemetry-level', 'off', '--reconnection-grace-time', '1'],
      ...['--without-connection-token', '--accept-server-license-terms'],
      ...(restricted ? [] : ['--disable-workspace-trust']),
      ...['--disable-experiments', '--disable-update-check'],
      '--enable-smoke-test-driver', // the page then takes a test module in its address, and says when it is ready
      ...places,
    ],
    { env },
  )
  const [, port] = await printed(child, /agent listening on (\d+)/)
  return { process: child, data, address: `localhost:${port}` }
}

/** The page that shows a folder; with `tests`, it loads that module beside the extension and runs it. */
export function pageOf(server: EditorServer, folder: string, tests?: { extension: string; module: string }): string {
  const remote = (path: string) => `vscode-remote://${server.address}${path}`
  const payload = [
    ['skipWelcome', 'true'],
    ['skipReleaseNotes', 'true'],
    ...(tests
      ? [
          ['extensionDevelopmentPath', remote(tests.extension)],
          ['extensionTestsPath', remote(tests.module)],
        ]
      : []),
  ]
  return `http://${server.address}/?${String(new URLSearchParams({ folder, payload: JSON.stringify(payload) }))}`
}

/** What the extension host, or an extension in it, logged as an error. Ask before a reload: a host that ends logs some too. */
export function hostErrors({ data }: EditorServer): string[] {
  const logs = readdirSync(join(data, 'data', 'logs'), { recursive: true }).map(String)
  return logs
    .filter((path) => /exthost\d*\/(remoteexthost\.log|.*wattproof.*\.log|[^/]*output_logging[^/]*\/.*)$/i.test(path))
    .flatMap((path) => readFileSync(join(data, 'data', 'logs', path), 'utf8').split(/\n(?=\d{4}-\d\d-\d\d )/))
    .filter((entry) => /^\S+ \S+ \[error\]/.test(entry) && !/vscode\.(git|github)/.test(entry))
}
