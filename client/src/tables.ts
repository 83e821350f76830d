import { Uri, l10n, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import {
  panelsRequest,
  tableRequest,
  type PanelsResult,
  type TableParams,
  type TableResult,
} from '../../server/src/editor/protocol.ts'
import { showPage } from './pages.ts'
import { pickKind } from './pick-kind.ts'
import { isRecord } from './records.ts'

/** Shows what the records of a kind type as a table, drawn by the editor's own preview of Markdown. */
export async function showTable(client: BaseLanguageClient): Promise<void> {
  const table = await tableOf(client, 'markdown')
  if (!table) return
  await showPage(l10n.t('{0} records', table.kind), table.text)
}

/** Shows all panels side by side by what somebody asks who chooses one. */
export async function comparePanels(client: BaseLanguageClient): Promise<void> {
  const panels = await client.sendRequest<PanelsResult>(panelsRequest)
  if (panels) await showPage(l10n.t('Panels side by side'), panels.text)
  else void window.showInformationMessage(l10n.t('There is no panel record here yet.'))
}

/** Writes what the records of a kind type to a file that a spreadsheet opens. A record is never overwritten. */
export async function saveTable(client: BaseLanguageClient): Promise<void> {
  const table = await tableOf(client, 'csv')
  if (!table) return
  const folder = workspace.workspaceFolders?.[0]?.uri
  const target = await window.showSaveDialog({
    title: l10n.t('The table'),
    ...(folder && { defaultUri: Uri.joinPath(folder, `${table.kind}s.csv`) }),
    filters: { CSV: ['csv'] },
  })
  if (!target) return
  if (isRecord(target.path)) return void window.showErrorMessage(l10n.t('That is a record, and stays as it is.'))
  await workspace.fs.writeFile(target, new TextEncoder().encode(table.text))
  const name = target.path.slice(target.path.lastIndexOf('/') + 1)
  const written =
    table.rows === 1
      ? l10n.t('{0} is written: 1 record.', name)
      : l10n.t('{0} is written: {1} records.', name, table.rows)
  void window.showInformationMessage(written)
}

async function tableOf(client: BaseLanguageClient, format: TableParams['format']) {
  const kind = await pickKind(l10n.t('A table of which records?'))
  if (kind === undefined) return null
  const table = await client.sendRequest<TableResult>(tableRequest, { kind, format })
  if (!table) void window.showInformationMessage(l10n.t('There is no {0} record here yet.', kind))
  return table && { ...table, kind }
}
