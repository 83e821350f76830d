import { l10n, window, workspace, WorkspaceEdit, type Uri } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { putPanelRequest, type PutPanelParams, type PutPanelResult } from '../../server/src/editor/protocol-changes.ts'
import { systemFor } from './review-system.ts'

/** Puts a panel, its count and its wiring into a system; asks for surface and panel, and for the array where several lie there. */
export async function putPanel(client: BaseLanguageClient, wanted: Uri | undefined): Promise<void> {
  const system = await systemFor(wanted, l10n.t('Put a panel into which system?'))
  if (!system) return
  const textDocument = { uri: client.code2ProtocolConverter.asUri(system) }
  let chosen: PutPanelParams = { textDocument }
  for (;;) {
    const answer = await client.sendRequest<PutPanelResult>(putPanelRequest, chosen)
    if (!answer) return void window.showErrorMessage(l10n.t('This file could not be read as a system.'))
    if ('problem' in answer) return void window.showErrorMessage(answer.problem)
    if ('done' in answer) return put(client, system, answer)
    const { choose, from } = answer
    if (from.length === 0) return void window.showInformationMessage(noneOf(choose))
    const items = from.map(({ id, figures, note }) => ({ label: id, description: figures, detail: note }))
    const picked = await window.showQuickPick(items, { title: titleOf(choose), matchOnDescription: true })
    if (!picked) return
    chosen = { ...chosen, [choose]: picked.label }
  }
}

type Choice = 'surface' | 'array' | 'panel'

const titleOf = (what: Choice) =>
  ({
    surface: l10n.t('Onto which surface?'),
    array: l10n.t('Several arrays lie there: which one is to have the panels?'),
    panel: l10n.t('Which panel? Best first; energy and price are those of the panels on this surface.'),
  })[what]

const noneOf = (what: Choice) =>
  what === 'panel'
    ? l10n.t('There is no panel record here yet.')
    : l10n.t('This system has no surface with a length and a width.')

async function put(
  client: BaseLanguageClient,
  system: Uri,
  { edits, done }: Extract<PutPanelResult, { done: string }>,
) {
  const edit = new WorkspaceEdit()
  for (const { range, newText } of edits) edit.replace(system, client.protocol2CodeConverter.asRange(range), newText)
  await workspace.applyEdit(edit)
  await window.showTextDocument(system)
  void window.showInformationMessage(done)
}
