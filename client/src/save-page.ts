import { env, window, workspace, type Uri } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { pageRequest, type PageResult } from '../../server/src/editor/protocol.ts'
import { isRecord, isSystem } from './records.ts'
import { revisionOf } from './revision.ts'

/** What is made of a system: the page for a customer, or the form for measuring that is taken along. */
export type Paper = 'page' | 'form'

const titles: Readonly<Record<Paper, string>> = { page: 'The page for the customer', form: 'The form for measuring' }

/** Asks for units and a file, and writes the paper there. A record is never overwritten. */
export async function savePage(client: BaseLanguageClient, paper: Paper, wanted: Uri | undefined): Promise<void> {
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
    { title: `${titles[paper]}: units` },
  )
  if (!units) return
  const target = await window.showSaveDialog({
    title: titles[paper],
    defaultUri: system.with({
      path: system.path.replace(/\.system\.\w+$/i, paper === 'form' ? '-form.html' : '.html'),
    }),
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
  const page = await client.sendRequest<PageResult>(pageRequest, {
    textDocument,
    units: units.units,
    revision,
    form: paper === 'form',
  })
  if (!page) {
    void window.showErrorMessage('There is no page for this file: it could not be read as a system.')
    return
  }
  await workspace.fs.writeFile(target, new TextEncoder().encode(page.html))
  const show = 'Open in Browser'
  const name = target.path.slice(target.path.lastIndexOf('/') + 1)
  if ((await window.showInformationMessage(`${name} is written.`, show)) === show) await env.openExternal(target)
}
