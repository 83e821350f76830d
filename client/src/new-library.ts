import { Uri, l10n, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { skeletonRequest, type SkeletonResult } from '../../server/src/editor/protocol.ts'
import { exists, openDraft } from './new-record.ts'

/** Opens the settings of a library as a commented form, or those that are there. Nothing is written until the person saves. */
export async function newLibrary(client: BaseLanguageClient, wanted: Uri | undefined): Promise<void> {
  const folder = wanted ?? (await chosen())
  if (!folder) return
  for (const name of ['wattproof.yaml', 'wattproof.yml']) {
    const there = Uri.joinPath(folder, name)
    if (!(await exists(there))) continue
    await window.showTextDocument(there)
    return void window.showInformationMessage(l10n.t('This folder is a library already: {0} is in it.', name))
  }
  const skeleton = await client.sendRequest<SkeletonResult>(skeletonRequest, { kind: 'library' })
  if (skeleton) await openDraft(Uri.joinPath(folder, 'wattproof.yaml'), skeleton.text)
}

/** The folder of the window, one of several, or without any the one that a person picks from the disk. */
async function chosen(): Promise<Uri | undefined> {
  const folders = workspace.workspaceFolders ?? []
  if (folders.length === 1) return folders[0]!.uri
  if (folders.length > 1) return (await window.showWorkspaceFolderPick())?.uri
  const title = l10n.t('The folder of the new library')
  return (await window.showOpenDialog({ title, canSelectFiles: false, canSelectFolders: true }))?.[0]
}
