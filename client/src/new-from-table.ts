import { Uri, commands, l10n, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { rowsRequest, type RowsResult } from '../../server/src/editor/protocol.ts'
import { chosenFolder, exists } from './new-record.ts'
import { pickKind } from './pick-kind.ts'

/** Asks for a table and a kind, and writes a record for each row beside others of its kind. Where one of the files is there, nothing is written. */
export async function newRecordsFromTable(client: BaseLanguageClient, wanted: Uri | undefined): Promise<void> {
  const title = l10n.t('New records from a table')
  const filters = { [l10n.t('CSV, a table that a spreadsheet saved')]: ['csv', 'tsv'] }
  const file = wanted ?? (await window.showOpenDialog({ title, openLabel: l10n.t('Read'), filters }))?.[0]
  if (!file) return
  const kind = await pickKind(l10n.t('What is each row?'))
  if (kind === undefined) return
  const folder = (await chosenFolder(kind)) ?? Uri.joinPath(file, '..')
  const text = new TextDecoder().decode(await workspace.fs.readFile(file))
  const from = file.path.slice(file.path.lastIndexOf('/') + 1)
  const params = { kind, text, from, folder: client.code2ProtocolConverter.asUri(folder) }
  const made = await client.sendRequest<RowsResult>(rowsRequest, params)
  if ('problem' in made) return void window.showErrorMessage(made.problem)
  const records = made.records.map(({ name, text }) => ({ name, text, target: Uri.joinPath(folder, name) }))
  for (const { name, target } of records)
    if (await exists(target))
      return void window.showErrorMessage(l10n.t('{0} is there already: nothing was written.', name))
  for (const { text, target } of records) await workspace.fs.writeFile(target, new TextEncoder().encode(text))
  for (const note of made.notes) void window.showWarningMessage(`${from}: ${note}`)
  const shownFolder = workspace.asRelativePath(folder)
  const written =
    records.length === 1
      ? l10n.t('1 record of {0} written to {1}.', from, shownFolder)
      : l10n.t('{0} records of {1} written to {2}.', records.length, from, shownFolder)
  void window.showInformationMessage(written)
  if (records[0]) await window.showTextDocument(records[0].target)
  await commands.executeCommand('workbench.actions.view.problems')
}
