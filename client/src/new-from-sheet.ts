import { Uri, l10n, window } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { draftRequest, type DraftParams, type DraftResult } from '../../server/src/editor/protocol.ts'
import { chosenFolder, exists, openDraft } from './new-record.ts'

/** Asks for a PDF and, where it has several products, for one of them, and opens a draft of its record. Nothing is written until the person saves. */
export async function newFromSheet(client: BaseLanguageClient, wanted: Uri | undefined): Promise<void> {
  const title = l10n.t('New panel record from a sheet')
  const file =
    wanted ?? (await window.showOpenDialog({ title, openLabel: l10n.t('Read'), filters: { PDF: ['pdf'] } }))?.[0]
  if (!file) return
  const folder = (await chosenFolder('panel')) ?? Uri.joinPath(file, '..')
  const address = (uri: Uri) => client.code2ProtocolConverter.asUri(uri)
  const ask = (params: DraftParams) => client.sendRequest<DraftResult>(draftRequest, params)
  const params = { file: address(file), folder: address(folder) }
  let draft = await ask(params)
  if ('models' in draft) {
    const model = await window.showQuickPick(draft.models, { title, placeHolder: l10n.t('The product of the sheet') })
    if (model === undefined) return
    draft = await ask({ ...params, model })
  }
  if ('problem' in draft) return void window.showErrorMessage(draft.problem)
  if ('models' in draft) return
  const target = await freeName(folder, draft.id)
  await openDraft(target, draft.text)
}

/** A record that is there already is not drafted over. */
async function freeName(folder: Uri, id: string): Promise<Uri> {
  for (let n = 1; ; n++) {
    const target = Uri.joinPath(folder, `${id}${n === 1 ? '' : `-${n}`}.panel.yaml`)
    if (!(await exists(target))) return target
  }
}
