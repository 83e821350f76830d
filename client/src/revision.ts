import { extensions, type Uri, l10n } from 'vscode'
import { isRecord } from './records.ts'

/** What this file uses of the editor's own git extension. */
interface GitExtension {
  getAPI(version: 1): {
    getRepository(uri: Uri): {
      readonly state: {
        readonly HEAD?: { readonly commit?: string }
        readonly workingTreeChanges: readonly { readonly uri: Uri }[]
        readonly indexChanges: readonly { readonly uri: Uri }[]
      }
    } | null
  }
}

/** The commit that records are of, in words, where the editor knows it. */
export async function revisionOf(uri: Uri, isDirty: boolean): Promise<string | null> {
  const git = extensions.getExtension<GitExtension>('vscode.git')
  const state = (await git?.activate())?.getAPI(1).getRepository(uri)?.state
  const commit = state?.HEAD?.commit
  if (!state || !commit) return null
  const changed = [...state.workingTreeChanges, ...state.indexChanges].some((one) => isRecord(one.uri.path))
  const name = commit.slice(0, 12)
  return isDirty || changed
    ? l10n.t('records at revision {0}, changed since', name)
    : l10n.t('records at revision {0}', name)
}
