import { Selection, Uri, l10n, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { skippedGlob } from './records.ts'
import { skeletonRequest, type SkeletonResult } from '../../server/src/editor/protocol.ts'

/**
 * Asks for a name and a folder and opens a commented skeleton under that name. Nothing is written to disk until the
 * person saves.
 *
 * @param wanted  the folder, where a person picked one already
 */
export async function newRecord(client: BaseLanguageClient, kind: string, wanted?: Uri): Promise<void> {
  const typed = await window.showInputBox({
    title: titleOf(kind),
    prompt: l10n.t('Its name, or the id that other records refer to it by: the file becomes ID.{0}.yaml', kind),
    placeHolder: kind === 'system' ? l10n.t('Sailing boat, 10 m') : 'Tern 110',
    validateInput: (text) => (idOf(text) === '' ? l10n.t('A letter or a digit, at least') : null),
  })
  const id = idOf(typed ?? '')
  if (typed === undefined || id === '') return
  const name = `${id}.${kind}.yaml`
  const folder = wanted ?? (await chosenFolder(kind))
  if (folder === null) return
  const target = folder && Uri.joinPath(folder, name)
  if (target && (await exists(target))) {
    await window.showTextDocument(target)
    void window.showInformationMessage(l10n.t('{0} is there already.', name))
    return
  }
  const skeleton = await client.sendRequest<SkeletonResult>(skeletonRequest, { kind })
  if (skeleton) await openDraft(target ?? Uri.file(name), named(skeleton.text, typed.trim(), id))
}

function titleOf(kind: string): string {
  switch (kind) {
    case 'panel':
      return l10n.t('New panel record')
    case 'controller':
      return l10n.t('New controller record')
    case 'battery':
      return l10n.t('New battery record')
    case 'climate':
      return l10n.t('New climate record')
    default:
      return l10n.t('New system')
  }
}

/** Opens a text under a name that nothing on disk has yet; the cursor is where the record's name goes. */
export async function openDraft(target: Uri, text: string): Promise<void> {
  const document = await workspace.openTextDocument(target.with({ scheme: 'untitled' }))
  const editor = await window.showTextDocument(document)
  await editor.edit((edit) => edit.insert(document.positionAt(0), text))
  const nameKey = /^name: ?/m.exec(document.getText())
  const start = document.positionAt(nameKey ? nameKey.index + nameKey[0].length : 0)
  editor.selection = new Selection(start, start)
  editor.revealRange(editor.selection)
}

/** `Tern 110, black` is `tern-110-black`; what is an id already stays as it is. */
function idOf(typed: string): string {
  const text = typed.trim()
  if (/^[a-z0-9][a-z0-9._-]*$/i.test(text)) return text
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/\p{M}/gu, '')
    .split(/[^a-z0-9.]+/)
    .filter((word) => word !== '' && word !== '.')
    .join('-')
}

/** The form with the name that was typed, where it was more than an id. */
const named = (form: string, name: string, id: string): string =>
  name === id ? form : form.replace(/^name: {0,28}/m, () => `name: ${quoted(name)}`.padEnd(32) + '  ')

const quoted = (name: string) => (/^[\p{L}\d][^:#"'[\]{},]*$/u.test(name) ? name : JSON.stringify(name))

/** Beside the record that is open, else where others of its kind are; where there are none a person picks, and without folders it is undefined. */
export async function chosenFolder(kind: string): Promise<Uri | null | undefined> {
  const open = window.activeTextEditor?.document.uri
  if (open && open.scheme !== 'untitled' && open.path.endsWith(`.${kind}.yaml`)) return Uri.joinPath(open, '..')
  const home = homeOf(await workspace.findFiles(`**/*.${kind}.{yaml,yml,json}`, skippedGlob), open)
  if (home) return home
  const folders = workspace.workspaceFolders ?? []
  if (folders.length <= 1) return folders[0]?.uri
  return (await window.showWorkspaceFolderPick())?.uri ?? null
}

/** Of the folders of these files the one that is nearest to `here`, and of several the one that has most of them. */
function homeOf(files: readonly Uri[], here: Uri | undefined): Uri | undefined {
  const folders = new Map<string, number>()
  for (const file of files) {
    const folder = Uri.joinPath(file, '..').toString()
    folders.set(folder, (folders.get(folder) ?? 0) + 1)
  }
  const steps = here?.toString().split('/') ?? []
  const nearness = (folder: string) => steps.findIndex((step, i) => folder.split('/')[i] !== step)
  const [home] = [...folders].sort(([a, n], [b, m]) => nearness(b) - nearness(a) || m - n)
  return home && Uri.parse(home[0])
}

export async function exists(uri: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(uri)
    return true
  } catch {
    return false
  }
}
