import type {
  CancellationToken,
  Diagnostic,
  DocumentDiagnosticReport,
  WorkspaceDiagnosticReport,
  WorkspaceFullDocumentDiagnosticReport,
} from 'vscode-languageserver'
import type { Checked } from '../check/checked.ts'
import { diagnostics } from './handlers/diagnostics.ts'
import type { Session } from './session.ts'

/** Longest time that the findings of an opened record wait for the settings of its library [ms]. */
const patience = 150
/** How long a workspace report may keep other requests waiting [ms]. */
const slice = 10

export async function documentReport(
  session: Session,
  uri: string,
  previous?: string,
): Promise<DocumentDiagnosticReport> {
  await settled(session, uri)
  const here = session.here(uri)
  if (!here) return { kind: 'full', items: [] }
  const resultId = idOf(here.checked)
  return resultId === previous ? { kind: 'unchanged', resultId } : { kind: 'full', resultId, items: diagnostics(here) }
}

/** What a record names must be known before its findings are; for others the wait is short. */
export async function settled({ indexed, pathOf, workspace: { library } }: Session, uri: string): Promise<void> {
  const path = pathOf(uri)
  const file = path === null ? undefined : library.file(path)
  if (!file) return
  const short = new Promise<void>((resolve) => setTimeout(resolve, patience))
  await (library.references(file).length > 0 ? indexed() : Promise.race([indexed(), short]))
}

/** Findings of files that are not open. The request is held until there is something new to say. */
export async function workspaceReport(
  session: Session,
  previous: ReadonlyMap<string, string>,
  token: CancellationToken,
): Promise<WorkspaceDiagnosticReport> {
  for (;;) {
    const change = nextChange(session, token)
    await session.indexed()
    const items = await newsOf(session, previous, token)
    if (items.length > 0 || token.isCancellationRequested) return { items }
    await change
  }
}

/** What was not told yet about files that are not open: findings, or that there are none any more. */
export async function newsOf(session: Session, previous: ReadonlyMap<string, string>, token: CancellationToken) {
  const items: Told[] = []
  const present = new Set<string>()
  let since = Date.now()
  for (const { path } of session.workspace.library.files()) {
    const uri = session.uriOf(path)
    present.add(uri)
    if (session.isOpen(path) || session.isBesides(path)) continue
    if (Date.now() - since > slice) {
      await new Promise((resolve) => setTimeout(resolve, 0))
      since = Date.now()
    }
    if (token.isCancellationRequested) return []
    const here = session.here(uri)
    if (here && idOf(here.checked) !== previous.get(uri)) items.push(report(uri, idOf(here.checked), diagnostics(here)))
  }
  for (const [uri, id] of previous) if (!present.has(uri) && id !== gone) items.push(report(uri, gone, []))
  return items
}

type Told = WorkspaceFullDocumentDiagnosticReport & { readonly resultId: string }

const report = (uri: string, resultId: string, items: Diagnostic[]): Told => ({
  kind: 'full',
  uri,
  version: null,
  resultId,
  items,
})

function nextChange(session: Session, token: CancellationToken): Promise<void> {
  return new Promise((resolve) => {
    const heard = session.onSettled(done)
    const stopped = token.onCancellationRequested(done)
    function done() {
      heard.dispose()
      stopped.dispose()
      resolve()
    }
  })
}

const gone = 'gone'
const ids = new WeakMap<Checked, string>()
let count = 0

/** Names one check of one file; the next check of it has another name. */
function idOf(checked: Checked): string {
  const known = ids.get(checked) ?? String(++count)
  ids.set(checked, known)
  return known
}
