import { Uri, env, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { pageRequest, type PageResult } from '../../server/src/editor/protocol.ts'
import { isRecord, isSystem } from './records.ts'
import { revisionOf } from './revision.ts'

/** Asks for units and a file, and writes the page for a customer there. A record is never overwritten. */
export async function savePage(client: BaseLanguageClient, wanted: Uri | undefined): Promise<void> {
  const system = wanted ?? window.activeTextEditor?.document.uri
  if (!system || !isSystem(system.path)) {
    void window.showInformationMessage('Open a system description first; its name ends in .system.yaml.')
    return
  }
  const units = await window.showQuickPick(
    [
      { label: 'Metric', description: 'metres, kilograms, °C', units: 'metric' as const },
      { label: 'US', description: 'feet, pounds, °F', units: 'us' as const },
    ],
    { title: 'The page for the customer: units' },
  )
  if (!units) return
  const target = await window.showSaveDialog({
    title: 'The page for the customer',
    defaultUri: system.with({ path: system.path.replace(/\.system\.\w+$/i, '.html') }),
    filters: { HTML: ['html'] },
  })
  if (!target) return
  if (isRecord(target.path)) {
    void window.showErrorMessage('That is a record, and stays as it is.')
    return
  }
  const open = workspace.textDocuments.find(({ uri }) => uri.toString() === system.toString())
  const revision = await revisionOf(system, open?.isDirty ?? false).catch(() => null)
  const textDocument = { uri: client.code2ProtocolConverter.asUri(system) }
  const page = await client.sendRequest<PageResult>(pageRequest, { textDocument, units: units.units, revision })
  if (!page) {
    void window.showErrorMessage('There is no page for this file: it could not be read as a system.')
    return
  }
  await workspace.fs.writeFile(target, new TextEncoder().encode(page.html))
  const show = 'Open in Browser'
  const name = target.path.slice(target.path.lastIndexOf('/') + 1)
  if ((await window.showInformationMessage(`${name} is written.`, show)) === show) await env.openExternal(target)
}
