import { Uri, WorkspaceEdit, l10n, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { sheetAdditionRequest, type SheetAdditionResult } from '../../server/src/editor/protocol.ts'

/** More bytes than any datasheet has. */
const mostBytes = 50e6

/** What a PDF holds; null where it is gone, or too large to be shown. */
export async function pdfAt(address: string): Promise<Uint8Array | null> {
  const file = Uri.parse(address)
  try {
    const { size } = await workspace.fs.stat(file)
    // a copy, for a buffer of Node would not reach the view as bytes
    return size > mostBytes ? null : new Uint8Array(await workspace.fs.readFile(file))
  } catch {
    return null
  }
}

/** Offers to add a field that the sheet prints and the record lacks. */
export async function offerAddition(client: BaseLanguageClient, record: Uri, field: string): Promise<void> {
  const ask = () =>
    client.sendRequest<SheetAdditionResult>(sheetAdditionRequest, {
      textDocument: { uri: client.code2ProtocolConverter.asUri(record) },
      field,
    })
  const offer = await ask()
  if (!offer) return
  const add = l10n.t('Add')
  if ((await window.showInformationMessage(`${offer.title}?`, add)) !== add) return
  const now = await ask() // somebody may have typed meanwhile
  if (!now) return
  const edit = new WorkspaceEdit()
  for (const { range, newText } of now.edits)
    edit.replace(record, client.protocol2CodeConverter.asRange(range), newText)
  await workspace.applyEdit(edit)
}
