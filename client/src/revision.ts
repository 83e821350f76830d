import { l10n, type Uri } from 'vscode'
import { git } from './git.ts'
import { isRecord } from './records.ts'

/** The commit that records are of, in words, where the editor knows it. */
export async function revisionOf(uri: Uri, isDirty: boolean): Promise<string | null> {
  const state = (await git())?.getRepository(uri)?.state
  const commit = state?.HEAD?.commit
  if (!state || !commit) return null
  const changed = [...state.workingTreeChanges, ...state.indexChanges].some((one) => isRecord(one.uri.path))
  const name = commit.slice(0, 12)
  return isDirty || changed
    ? l10n.t('records at revision {0}, changed since', name)
    : l10n.t('records at revision {0}', name)
}
