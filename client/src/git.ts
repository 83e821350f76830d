import { extensions, type Uri } from 'vscode'

/** What is used of the editor's own git extension: its API, version 1. */
export interface Repository {
  readonly rootUri: Uri
  readonly state: {
    readonly HEAD?: {
      readonly name?: string
      readonly commit?: string
      readonly upstream?: { readonly remote: string; readonly name: string }
    }
    readonly workingTreeChanges: readonly GitChange[]
    readonly indexChanges: readonly GitChange[]
    readonly untrackedChanges?: readonly GitChange[]
  }
  getMergeBase(one: string, other: string): Promise<string | undefined>
  /** Of the files as they are on disk from those of a revision; without those that git does not know. */
  diffWith(revision: string): Promise<readonly GitChange[]>
  /** The text of a file at a revision; throws where it is not there. */
  show(revision: string, path: string): Promise<string>
}

export interface GitChange {
  readonly uri: Uri
  readonly originalUri: Uri
  readonly renameUri?: Uri
  readonly status: number
}

/** The status of a file that git does not know. */
export const untracked = 7

interface GitExtension {
  getAPI(version: 1): {
    readonly repositories: readonly Repository[]
    getRepository(uri: Uri): Repository | null
  }
}

/** null in an editor without git, such as one in a browser. */
export async function git(): Promise<ReturnType<GitExtension['getAPI']> | null> {
  const extension = extensions.getExtension<GitExtension>('vscode.git')
  return (await extension?.activate())?.getAPI(1) ?? null
}
