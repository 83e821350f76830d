import { ProgressLocation, Uri, l10n, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { changesRequest, type ChangesParams, type ChangesResult } from '../../server/src/editor/protocol-changes.ts'
import { git, untracked, type Repository } from './git.ts'
import { showPage } from './pages.ts'
import { isRecord } from './records.ts'

/** Shows which findings are new since a revision, and which derived values differ. */
export async function showChanges(client: BaseLanguageClient): Promise<void> {
  const repositories = ((await git().catch(() => null))?.repositories ?? []).filter(
    ({ state, rootUri }) => state.HEAD?.commit !== undefined && isShown(rootUri),
  )
  if (repositories.length === 0)
    return void window.showInformationMessage(l10n.t('There is no git repository with a commit in this window.'))
  const revision = await pickRevision(repositories)
  if (revision === undefined) return
  const before: Before = new Map()
  for (const repository of repositories)
    try {
      await collect(repository, revision, before)
    } catch {
      return void window.showErrorMessage(l10n.t('git knows no revision {0} here.', revision))
    }
  const since = revision === 'HEAD' ? l10n.t('the last commit') : revision
  const params: ChangesParams = {
    since,
    before: [...before].map(([uri, text]) => ({ uri: client.code2ProtocolConverter.asUri(Uri.parse(uri)), text })),
  }
  const page = await window.withProgress(
    { location: ProgressLocation.Notification, title: l10n.t('Working out what changed since {0}', since) },
    () => client.sendRequest<ChangesResult>(changesRequest, params),
  )
  if (page) await showPage(l10n.t('Changes since {0}', since.replaceAll('/', '-')), page.text)
  else void window.showInformationMessage(l10n.t('No finding is new and no derived value differs since {0}.', since))
}

/** Texts as they were, by address. */
type Before = Map<string, string | null>

/** A repository around a folder of the window, or in one. */
const isShown = ({ path }: Uri) =>
  (workspace.workspaceFolders ?? []).some(
    ({ uri }) => uri.path === path || uri.path.startsWith(`${path}/`) || path.startsWith(`${uri.path}/`),
  )

async function pickRevision(repositories: readonly Repository[]): Promise<string | undefined> {
  const upstream = repositories[0]?.state.HEAD?.upstream
  const items = [
    { label: l10n.t('The last commit'), revision: 'HEAD' },
    ...(upstream
      ? [{ label: l10n.t('What was pushed'), description: '', revision: `${upstream.remote}/${upstream.name}` }]
      : []),
    { label: l10n.t('Another revision…'), revision: null },
  ]
  const title = l10n.t('Changes since when?')
  const picked = await window.showQuickPick(
    items.map((item) => ({ ...item, description: item.revision ?? '' })),
    { title },
  )
  if (!picked) return undefined
  if (picked.revision !== null) return picked.revision
  const prompt = l10n.t('A branch, a tag or a commit. Counts from where this branch left it.')
  return (await window.showInputBox({ title, prompt, value: 'main' }))?.trim() || undefined
}

/** The texts of records that differ from where this branch left a revision, as they were there. Unsaved ones differ too. */
async function collect(repository: Repository, revision: string, before: Before): Promise<void> {
  const from = (await repository.getMergeBase(revision, 'HEAD')) ?? revision
  const { workingTreeChanges, untrackedChanges = [], indexChanges } = repository.state
  const added = [...workingTreeChanges, ...untrackedChanges].filter(({ status }) => status === untracked)
  const changes = [...(await repository.diffWith(from)), ...indexChanges, ...added]
  const dirty = workspace.textDocuments.filter(({ isDirty, uri }) => isDirty && isInside(repository, uri))
  const uris = [
    ...changes.flatMap(({ uri, originalUri, renameUri }) => [originalUri, renameUri ?? uri]),
    ...dirty.map(({ uri }) => uri),
  ]
  for (const uri of uris) {
    if (!isRecord(uri.path) || before.has(String(uri))) continue
    before.set(String(uri), await repository.show(from, uri.fsPath).catch(() => null))
  }
}

const isInside = ({ rootUri }: Repository, { path }: Uri) => path.startsWith(`${rootUri.path}/`)
