import { Uri, commands, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { rowsRequest, type RowsResult } from '../../server/src/editor/protocol.ts'
import { chosenFolder, exists } from './new-record.ts'
import { pickKind } from './pick-kind.ts'

/** Asks for a table and a kind, and writes a record for each row beside others of its kind. Where one of the files is there, nothing is written. */
export async function newRecordsFromTable(client: BaseLanguageClient, wanted: Uri | undefined): Promise<void> {
  const title = 'New records from a table'
  const filters = { 'CSV, a table that a spreadsheet saved': ['csv', 'tsv'] }
  const file = wanted ?? (await window.showOpenDialog({ title, openLabel: 'Read', filters }))?.[0]
  if (!file) return
  const kind = await pickKind('What is each row?')
  if (kind === undefined) return
  const folder = (await chosenFolder(kind)) ?? Uri.joinPath(file, '..')
  const text = new TextDecoder().decode(await workspace.fs.readFile(file))
  const from = file.path.slice(file.path.lastIndexOf('/') + 1)
  const params = { kind, text, from, folder: client.code2ProtocolConverter.asUri(folder) }
  const made = await client.sendRequest<RowsResult>(rowsRequest, params)
  if ('problem' in made) return void window.showErrorMessage(made.problem)
  const records = made.records.map(({ name, text }) => ({ name, text, target: Uri.joinPath(folder, name) }))
  for (const { name, target } of records)
    if (await exists(target)) return void window.showErrorMessage(`${name} is there already: nothing was written.`)
  for (const { text, target } of records) await workspace.fs.writeFile(target, new TextEncoder().encode(text))
  for (const note of made.notes) void window.showWarningMessage(`${from}: ${note}`)
  const count = records.length === 1 ? '1 record' : `${records.length} records`
  void window.showInformationMessage(`${count} of ${from} written to ${workspace.asRelativePath(folder)}.`)
  if (records[0]) await window.showTextDocument(records[0].target)
  await commands.executeCommand('workbench.actions.view.problems')
}
