import type { Connection, Disposable } from 'vscode-languageserver'
import { TextDocuments } from './lsp.ts'
import { version } from '../../../package.json'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { dayOf } from '../records/dates.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { Sheets } from '../reader/kept.ts'
import { createAddresses } from './addresses.ts'
import { around } from './around.ts'
import { inBackground } from './caught.ts'
import type { Client } from './client.ts'
import type { Files } from './files.ts'
import { createGathering, worthwhile } from './gathering.ts'
import type { Here } from './here.ts'
import { createSettings } from './settings.ts'
import { createOpenSheets } from './sheets.ts'
import { createTyping } from './typing.ts'
import { createWeatherFiles } from './weather-files.ts'
import { createWorkspace, readAtOnce, type Stale, type Workspace } from './workspace.ts'

/** How long changes gather before what depends on them is checked again [ms]. */
const pause = 200
/** A process may only hold so many files open. */
const portion = 64

export type Session = ReturnType<typeof createSession>

/** One client with its folders and open documents: what is open wins over what is on disk. */
export function createSession(connection: Connection, client: Client, files: Files | null, sheets: Sheets | null) {
  const workspace: Workspace = createWorkspace(
    () => dayOf(new Date()),
    (path) => beside.of(path),
    (path, trace) => connection.console.error(`wattproof ${version}: internal-error in ${path}: ${trace}`),
    client.bundle,
  )
  const addresses = createAddresses()
  const settings = createSettings(connection, client)
  const documents = new TextDocuments(TextDocument)
  const folders = new Set<string>()
  /** Paths that were read for the sake of a file that is open, beside the folders of the window. */
  const besides = new Set<string>()
  const searched = new Set<string>()
  const beside = createOpenSheets(workspace.library, sheets, {
    isWanted: (path) => isOpen(path) && isReadable(addresses.uriOf(path)),
    ready: () => indexing,
    arrived(path) {
      workspace.recheck(path)
      reportSoon()
    },
  })
  const weather = createWeatherFiles(readWeather)
  const gathering = createGathering(connection, client, workspace, reportSoon)
  const listeners = new Set<(stale: Stale) => void>()
  const typing = createTyping((path) => report(new Set([path])))
  let timer: ReturnType<typeof setTimeout> | undefined
  let indexing = Promise.resolve()
  let isLong = false

  documents.onDidChangeContent(({ document }) => {
    const path = pathOf(document.uri)
    if (path === null) return
    typing.changed(path, document.getText())
    workspace.put(path, document.getText())
    weather.want(path, document.getText())
    reportSoon()
  })
  documents.onDidOpen(({ document }) => {
    const { uri } = document
    const path = pathOf(uri)
    if (path !== null) typing.opened(path, document.getText())
    if (path !== null && sheets) {
      beside.forget(path)
      workspace.recheck(path)
    }
    if (pathOf(uri) !== null && !uri.startsWith('untitled:'))
      inBackground(connection, () => after(() => readAround(uri)))
  })
  documents.onDidSave(({ document: { uri } }) => typing.rest(pathOf(uri) ?? ''))
  documents.onDidClose(({ document: { uri } }) => {
    settings.forget(uri)
    typing.closed(pathOf(uri) ?? '')
    inBackground(connection, () => reread([uri]))
  })

  return {
    client,
    workspace,
    settings,
    typing,
    documents,
    /** What may be looked at to answer about a file; null for files and schemes that are answered with nothing. */
    here,
    uriOf: addresses.uriOf,
    pathOf,
    isOpen,
    sheets: beside,
    /** Whether a file is known only because one that is open belongs with it. */
    isBesides: (path: string) => besides.has(path) && !isInFolder(path),
    /** Fulfilled when all folders named so far have been read. */
    indexed: () => indexing,
    /** Whether that takes longer than anybody waits. */
    isLong: () => isLong,
    /** Fulfilled when they are known by their families besides. */
    gathered: () => indexing.then(gathering.done),
    /** Called a moment after a change, with the files that must be checked again beside those that changed. */
    onChange(listener: (stale: Stale) => void): Disposable {
      listeners.add(listener)
      return { dispose: () => listeners.delete(listener) }
    },
    addFolders(added: readonly string[]) {
      added.forEach((folder) => folders.add(folder))
      setFolders()
      return after(() => index(added))
    },
    removeFolders(removed: readonly string[]) {
      removed.forEach((folder) => folders.delete(folder))
      setFolders()
      for (const path of workspace.library.paths()) {
        const uri = addresses.uriOf(path)
        if (!isOpen(path) && removed.some((folder) => uri.startsWith(`${folder}/`))) workspace.drop(path)
      }
      reportSoon()
    },
    reread,
  }

  function setFolders() {
    workspace.setFolders(
      [...folders].flatMap((uri) => addresses.pathOf(uri) ?? []).map((path) => path.replace(/\/?$/, '/')),
    )
  }

  function isReadable(uri: string): boolean {
    return uri.startsWith('file:') || (sheets?.isLocal === false && !uri.startsWith('untitled:'))
  }

  function pathOf(uri: string): string | null {
    const path = addresses.pathOf(uri)
    return path !== null && recordOfPath(path) ? path : null
  }

  function isOpen(path: string): boolean {
    return documents.keys().some((uri) => pathOf(uri) === path)
  }

  function here(uri: string): Here | null {
    const path = pathOf(uri)
    const checked = path === null ? null : workspace.check(path)
    if (path === null || !checked) return null
    return {
      bundle: client.bundle,
      uri,
      path,
      checked,
      library: workspace.library,
      client,
      today: dayOf(new Date()),
      check: workspace.check,
      beside: beside.of(path),
      uriOf: addresses.uriOf,
    }
  }

  function after(work: () => Promise<void>): Promise<void> {
    indexing = indexing.then(work).catch((error: unknown) => connection.console.error(String(error)))
    return indexing
  }

  /** The library above a file that no settings govern yet: a lone file, or one of a folder that was opened below its library. */
  async function readAround(uri: string) {
    const path = pathOf(uri)
    if (!files || path === null || workspace.library.settings(path)) return
    const { folder, isLibrary, deep } = await around(files, uri)
    if (searched.has(folder) || (!isLibrary && isInFolder(path))) return
    searched.add(folder)
    const found = await files.listIn(folder, deep)
    found.forEach((one) => besides.add(pathOf(one) ?? ''))
    await reread(found)
  }

  /** A folder of the window. */
  function isInFolder(path: string): boolean {
    return [...folders].some((folder) => path.startsWith(`${addresses.pathOf(folder)?.replace(/\/$/, '')}/`))
  }

  async function index(added: readonly string[]) {
    if (!files || added.length === 0) return
    const found = await files.list(added)
    isLong ||= worthwhile <= found.length
    await reread(found)
  }

  /** The folder of the window, or around a file that is open, that a link in it may lead into. */
  function folderAbove(uri: string): string | undefined {
    const above = [...folders, ...searched].filter((folder) => uri.startsWith(folder.replace(/\/?$/, '/')))
    return above.sort((a, b) => b.length - a.length)[0]
  }

  /** Reads files again that are not open; one that is gone is dropped. */
  async function reread(uris: readonly string[]) {
    const put: string[] = []
    for (let at = 0; at < uris.length; at += portion) {
      // not of all at once: of ten thousand that would keep whoever waits for longer than a check
      const some = uris.slice(at, at + portion)
      for (const uri of some) weather.changed(addresses.pathOf(uri) ?? '')
      const paths = new Map(some.map((uri) => [uri, pathOf(uri)]))
      const texts = await Promise.all(
        some.map(async (uri) => (paths.get(uri) ? ((await files?.read(uri, folderAbove(uri))) ?? null) : null)),
      )
      some.forEach((uri, i) => {
        const path = paths.get(uri)
        const text = texts[i] ?? null
        if (path === null || path === undefined || isOpen(path)) return
        if (text === null) workspace.drop(path)
        else {
          workspace.put(path, text)
          if (typeof text === 'string') weather.want(path, text)
          put.push(path)
        }
      })
    }
    reportSoon()
    if (readAtOnce < put.length) inBackground(connection, () => gathering.add(put))
  }

  function reportStale() {
    const stale = workspace.takeStale()
    if (stale) report(stale)
  }

  function report(stale: Stale) {
    listeners.forEach((listener) => inBackground(connection, () => listener(stale)))
  }

  function readWeather(path: string) {
    if (!files) return
    inBackground(connection, () =>
      after(async () => {
        const read = await files.read(addresses.uriOf(path), folderAbove(addresses.uriOf(path)))
        workspace.putWeather(path, typeof read === 'string' ? read : '')
        reportSoon()
      }),
    )
  }

  function reportSoon() {
    clearTimeout(timer)
    timer = setTimeout(() => inBackground(connection, reportStale), pause)
  }
}
