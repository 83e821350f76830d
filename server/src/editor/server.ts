import type { Connection } from 'vscode-languageserver'
import { version } from '../../../package.json'
import { CancellationToken, DidChangeConfigurationNotification, DidChangeWatchedFilesNotification } from './lsp.ts'
import type { Sheets } from '../reader/kept.ts'
import { schemas } from '../records/schemas.generated.ts'
import { skeleton } from '../records/skeleton.ts'
import { capabilitiesFor } from './capabilities.ts'
import { caught, inBackground } from './caught.ts'
import { clientFiles } from './client-files.ts'
import { clientOf, type Client } from './client.ts'
import { addFeatures } from './features.ts'
import { addChanges } from './add-changes.ts'
import { addPictures } from './add-pictures.ts'
import { addSheet } from './add-sheet.ts'
import { addTables } from './add-tables.ts'
import type { Pictures } from './pictures.ts'
import { bundleOf, type Bundle, type Language, type Texts } from '../wording/bundle.ts'
import type { Files } from './files.ts'
import { diagnostics } from './handlers/diagnostics.ts'
import {
  recordGlobs,
  rulePageRequest,
  type RulePage,
  settingsSection,
  skeletonRequest,
  type SkeletonParams,
  type SkeletonResult,
  weatherGlob,
} from './protocol.ts'
import { rulePageIn } from '../wording/rule-page.ts'
import { addRefusals } from './in-turn.ts'
import { documentReport, newsOf, ready, workspaceReport } from './pull.ts'
import { createSession, type Session } from './session.ts'

export type LoadPictures = (address: string | undefined) => Pictures
export type LoadWords = (language: Exclude<Language, 'en'>, address: string | undefined) => Texts | undefined

/**
 * Answers a client until it hangs up.
 *
 * @param own     how this host reads files itself, for clients that do not offer to
 * @param makeSheets  what reads datasheets for a client; null where nothing can
 * @param rulePage  address of the page of a rule, with `{rule}` where its id goes; null where only the client has one
 * @param loadPictures  loads the program that draws, once, when it is first asked for
 * @param loadWords  loads the words of a language for a client that wants another than English
 */
export function serve(
  connection: Connection,
  own: Files | null,
  makeSheets: (client: Client) => Sheets | null,
  rulePage: string | null,
  loadPictures: LoadPictures,
  loadWords: LoadWords,
): void {
  let bundle: Bundle | undefined
  connection.onInitialize((params) => {
    const asked = clientOf(params, rulePage)
    const texts = asked.language === 'en' ? undefined : loadWords(asked.language, asked.options.languages)
    bundle = bundleOf(texts, asked.options.units === 'us' ? 'us' : 'metric')
    const client = { ...asked, bundle }
    const session = createSession(
      connection,
      client,
      client.options.clientFiles ? clientFiles(connection, own) : own,
      makeSheets(client),
    )
    const folders = params.workspaceFolders?.map(({ uri }) => uri) ?? (params.rootUri ? [params.rootUri] : [])
    connection.onInitialized(() => start(connection, session, folders))
    session.documents.listen(connection)
    addDiagnostics(connection, session)
    addFeatures(connection, session)
    followChanges(connection, session)
    addPictures(connection, session, () => loadPictures(client.options.pictures))
    addSheet(connection, session, bundle)
    addTables(connection, session, bundle)
    addChanges(connection, session)
    return { capabilities: capabilitiesFor(client), serverInfo: { name: 'wattproof', version } }
  })
  addRefusals(connection)
  connection.onRequest(skeletonRequest, ({ kind }: SkeletonParams): SkeletonResult => {
    const info = Object.hasOwn(schemas, kind) ? schemas[kind as keyof typeof schemas] : undefined
    return info ? { text: skeleton(info, new Map(), bundle) } : null
  })
  connection.onRequest(rulePageRequest, ({ text }: RulePage): RulePage => ({ text: rulePageIn(text, bundle) }))
  connection.listen()
}

function start(connection: Connection, session: Session, folders: readonly string[]) {
  const { client } = session
  if (client.registersConfiguration) {
    inBackground(connection, () =>
      connection.client.register(DidChangeConfigurationNotification.type, { section: settingsSection }),
    )
  }
  if (client.registersWatchers) {
    const watchers = [...recordGlobs, weatherGlob].map((globPattern) => ({ globPattern }))
    inBackground(connection, () => connection.client.register(DidChangeWatchedFilesNotification.type, { watchers }))
  }
  if (client.workspaceFolders) {
    connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
      session.removeFolders(removed.map(({ uri }) => uri))
      inBackground(connection, () => session.addFolders(added.map(({ uri }) => uri)))
    })
  }
  inBackground(connection, () => session.addFolders(folders))
}

function followChanges(connection: Connection, session: Session) {
  const { pull, refresh } = session.client
  const refreshing = (ask: () => unknown) => inBackground(connection, ask)
  connection.onDidChangeWatchedFiles(({ changes }) =>
    inBackground(connection, () => session.reread(changes.map(({ uri }) => uri))),
  )
  connection.onDidChangeConfiguration(({ settings }) => {
    session.settings.changed(settings)
    if (refresh.hints) refreshing(() => connection.languages.inlayHint.refresh())
    if (refresh.lenses) refreshing(() => connection.sendRequest('workspace/codeLens/refresh'))
  })
  session.onChange((stale) => {
    if (refresh.lenses) refreshing(() => connection.sendRequest('workspace/codeLens/refresh'))
    if (stale !== 'all' && stale.size === 0) return
    if (pull) refreshing(() => connection.languages.diagnostics.refresh())
    if (refresh.hints) refreshing(() => connection.languages.inlayHint.refresh())
  })
}

/** Pull where the client can, push otherwise, never both. */
function addDiagnostics(connection: Connection, session: Session) {
  if (session.client.pull) {
    connection.languages.diagnostics.on(
      caught(
        connection,
        ({ textDocument, previousResultId }) => documentReport(session, textDocument.uri, previousResultId),
        () => ({ kind: 'full' as const, items: [] }),
      ),
    )
    connection.languages.diagnostics.onWorkspace((params, token) =>
      caught(
        connection,
        ({ previousResultIds }: typeof params) =>
          workspaceReport(session, new Map(previousResultIds.map(({ uri, value }) => [uri, value])), token),
        () => ({ items: [] }),
      )(params),
    )
    return
  }
  const publish = caught(
    connection,
    async (uri: string) => {
      await ready(session, uri)
      const here = session.here(uri)
      const version = session.documents.get(uri)?.version
      if (here && version !== undefined)
        await connection.sendDiagnostics({
          uri,
          version,
          diagnostics: diagnostics(here, here.checked.tree, session.typing.finishedOf(here.checked, here.path)),
        })
    },
    () => undefined,
  )
  session.documents.onDidChangeContent(({ document }) => inBackground(connection, () => publish(document.uri)))
  const reportClosed = pushClosed(connection, session)
  session.documents.onDidClose(({ document: { uri } }) => {
    if (session.pathOf(uri) !== null) inBackground(connection, () => reportClosed(uri))
  })
  session.onChange((stale) => {
    for (const uri of session.documents.keys()) {
      const path = session.pathOf(uri)
      if (path !== null && (stale === 'all' || stale.has(path))) inBackground(connection, () => publish(uri))
    }
    inBackground(connection, () => reportClosed())
  })
}

/** Reports what is new about files that are not open, `closed` being one that just was; one round after the other. */
function pushClosed(connection: Connection, session: Session) {
  const published = new Map<string, string>()
  let last = Promise.resolve()
  const report = caught(
    connection,
    async (closed?: string) => {
      if (closed !== undefined) {
        published.set(closed, 'open')
        await session.reread([closed])
      }
      for (const { uri, resultId, items } of await newsOf(session, published, CancellationToken.None)) {
        if (items.length > 0 || published.has(uri)) await connection.sendDiagnostics({ uri, diagnostics: items })
        published.set(uri, resultId)
      }
    },
    () => undefined,
  )
  return (closed?: string) => (last = last.then(() => report(closed)))
}
