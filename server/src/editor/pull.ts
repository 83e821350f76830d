import type {
  CancellationToken,
  Diagnostic,
  DocumentDiagnosticReport,
  WorkspaceDiagnosticReport,
  WorkspaceFullDocumentDiagnosticReport,
} from 'vscode-languageserver'
import { diagnostics } from './handlers/diagnostics.ts'
import type { Here } from './here.ts'
import type { Session } from './session.ts'

/** Longest time that the findings of an opened record wait for the settings of its library [ms]. */
const patience = 150
/** How often it is looked at whether the library is one that takes longer [ms]. */
const step = 25
/** How long a workspace report may keep other requests waiting [ms]. */
const slice = 10
/** How long nobody must have typed before files that are not open are looked at [ms]: one of them can take a while. */
const rest = 500

export async function documentReport(
  session: Session,
  uri: string,
  previous?: string,
): Promise<DocumentDiagnosticReport> {
  await ready(session, uri)
  const here = session.here(uri)
  if (!here) return { kind: 'full', items: [] }
  const { resultId, items } = resultOf(session, here)
  return resultId === previous ? { kind: 'unchanged', resultId } : { kind: 'full', resultId, items }
}

/** What a record names must be known before its findings are; for others the wait is short. */
export async function ready({ indexed, gathered, isLong, pathOf, workspace: { library } }: Session, uri: string) {
  const path = pathOf(uri)
  const file = path === null ? undefined : library.file(path)
  if (!file) return
  if (library.references(file).length > 0) return indexed()
  const all = gathered()
  for (let waited = 0; waited < patience && !isLong(); waited += step) {
    const pause = new Promise<'waiting'>((resolve) => setTimeout(() => resolve('waiting'), step))
    if ((await Promise.race([all, pause])) !== 'waiting') return
  }
}

/** Findings of files that are not open. The request is held until there is something new to say. */
export async function workspaceReport(
  session: Session,
  previous: ReadonlyMap<string, string>,
  token: CancellationToken,
): Promise<WorkspaceDiagnosticReport> {
  for (;;) {
    const change = nextChange(session, token)
    const items = await newsOf(session, previous, token)
    if (items.length > 0 || token.isCancellationRequested) return { items }
    await change
  }
}

/** What was not reported yet about files that are not open: findings, or that there are none any more. */
export async function newsOf(session: Session, previous: ReadonlyMap<string, string>, token: CancellationToken) {
  const items: Report[] = []
  const present = new Set<string>()
  await session.gathered()
  let since = performance.now()
  for (const path of session.workspace.library.paths()) {
    const uri = session.uriOf(path)
    present.add(uri)
    if (session.isOpen(path) || session.isBesides(path)) continue
    while (session.typing.wasWithin(rest) && !token.isCancellationRequested)
      await new Promise((resolve) => setTimeout(resolve, 50))
    if (performance.now() - since > slice) {
      await new Promise((resolve) => setTimeout(resolve, 0))
      since = performance.now()
    }
    if (token.isCancellationRequested) return []
    const result = newsAt(session, path, uri, previous.get(uri))
    if (result) items.push(report(uri, result.resultId, result.items))
  }
  for (const [uri, id] of previous) if (!present.has(uri) && id !== gone) items.push(report(uri, gone, []))
  return items
}

type Report = WorkspaceFullDocumentDiagnosticReport & { readonly resultId: string }

const report = (uri: string, resultId: string, items: Diagnostic[]): Report => ({
  kind: 'full',
  uri,
  version: null,
  resultId,
  items,
})

function nextChange(session: Session, token: CancellationToken): Promise<void> {
  return new Promise((resolve) => {
    const heard = session.onChange(done)
    const stopped = token.onCancellationRequested(done)
    function done() {
      heard.dispose()
      stopped.dispose()
      resolve()
    }
  })
}

const gone = 'gone'
/** By the stamps of the workspace: what an open file was reported to have is kept, and its check is not. */
const results = new WeakMap<object, Result>()
/** Of a file that is not open only the name of its findings is kept: a library has thousands. */
const names = new WeakMap<object, string>()

interface Result {
  /** The same for the same findings at the same places, so that nothing is sent again that has not changed. */
  readonly resultId: string
  readonly items: Diagnostic[]
}

const resultWith = (items: Diagnostic[]): Result => ({ resultId: digest(JSON.stringify(items)), items })

/** What a file that is not open has; null where that was reported before. */
function newsAt(session: Session, path: string, uri: string, before: string | undefined): Result | null {
  const stamp = session.workspace.stampOf(path)
  if (before !== undefined && names.get(stamp) === before) return null
  const found = resultFromNotes(session, path, uri) ?? resultFromCheck(session, uri)
  if (found) names.set(stamp, found.resultId)
  return found?.resultId === before ? null : found
}

function resultFromCheck(session: Session, uri: string): Result | null {
  const here = session.here(uri)
  return here && resultWith(diagnostics(here, here.checked.tree, session.typing.finishedOf(here.checked, here.path)))
}

/** Of a panel that need not be read again. */
function resultFromNotes({ workspace, client, uriOf }: Session, path: string, uri: string): Result | null {
  const findings = workspace.foundFromNotes(path)
  if (!findings) return null
  const { library } = workspace
  const text = library.text(path) as string
  return resultWith(diagnostics({ uri, client, library, uriOf }, { text }, findings))
}

function resultOf({ workspace, typing }: Session, here: Here): Result {
  const { findings } = here.checked
  const finished = typing.finishedOf(here.checked, here.path)
  const stamp = workspace.stampOf(here.path)
  const known = finished === findings ? results.get(stamp) : undefined
  if (known) return known
  const result = resultWith(diagnostics(here, here.checked.tree, finished))
  if (finished === findings) results.set(stamp, result)
  return result
}

/** A short name for a text; two texts of one file have the same one in a thousand million million cases. */
function digest(text: string): string {
  let [one, other] = [0x811c9dc5, 0x9747b28c]
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at)
    one = Math.imul(one ^ unit, 0x01000193)
    other = Math.imul(other ^ unit, 0x85ebca6b) ^ (other >>> 13)
  }
  return `${(one >>> 0).toString(36)}-${(other >>> 0).toString(36)}-${text.length.toString(36)}`
}
