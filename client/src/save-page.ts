import { env, l10n, window, workspace, type Uri } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { pageRequest, type PageResult } from '../../server/src/editor/protocol.ts'
import { chosenUnits } from './language.ts'
import { isRecord, isSystem } from './records.ts'
import { revisionOf } from './revision.ts'

/** What is made of a system: the page for a customer, or the form for measuring that is taken along. */
export type Paper = 'page' | 'form'

const titleOf = (paper: Paper) =>
  paper === 'page' ? l10n.t('The page for the customer') : l10n.t('The form for measuring')

/** Asks for units and a file, and writes the paper there. A record is never overwritten. */
export async function savePage(client: BaseLanguageClient, paper: Paper, wanted: Uri | undefined): Promise<void> {
  const system = wanted ?? window.activeTextEditor?.document.uri
  if (!system || !isSystem(system.path)) {
    void window.showInformationMessage(l10n.t('Open a system description first; its name ends in .system.yaml.'))
    return
  }
  const choices = [
    { label: l10n.t('Metric'), description: l10n.t('metres, kilograms, °C'), units: 'metric' as const },
    { label: l10n.t('US'), description: l10n.t('feet, pounds, °F'), units: 'us' as const },
  ]
  const units = await window.showQuickPick(
    choices.sort((a, b) => Number(b.units === chosenUnits()) - Number(a.units === chosenUnits())),
    { title: l10n.t('{0}: units', titleOf(paper)) },
  )
  if (!units) return
  const target = await window.showSaveDialog({
    title: titleOf(paper),
    defaultUri: system.with({
      path: system.path.replace(/\.system\.\w+$/i, paper === 'form' ? '-form.html' : '.html'),
    }),
    filters: { HTML: ['html'] },
  })
  if (!target) return
  if (isRecord(target.path)) {
    void window.showErrorMessage(l10n.t('That is a record, and stays as it is.'))
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
    void window.showErrorMessage(l10n.t('There is no page for this file: it could not be read as a system.'))
    return
  }
  await workspace.fs.writeFile(target, new TextEncoder().encode(page.html))
  const show = l10n.t('Open in Browser')
  const name = target.path.slice(target.path.lastIndexOf('/') + 1)
  if ((await window.showInformationMessage(l10n.t('{0} is written.', name), show)) === show)
    await env.openExternal(target)
}
