import { commands, l10n, window, workspace, type Uri } from 'vscode'
import { isSystem, skippedGlob } from './records.ts'

/** Opens what is found in a system and, beside it, its figures: the one that is open, else one that a person picks. */
export async function reviewSystem(showBeside: () => void, wanted: Uri | undefined): Promise<void> {
  const open = wanted ?? window.activeTextEditor?.document.uri
  const system = open && isSystem(open.path) ? open : await picked()
  if (!system) return
  await window.showTextDocument(system)
  showBeside()
  await commands.executeCommand('workbench.actions.view.problems')
}

async function picked(): Promise<Uri | undefined> {
  const files = await workspace.findFiles('**/*.system.{yaml,yml,json}', skippedGlob)
  if (files.length === 0) {
    void window.showInformationMessage(l10n.t('There is no system here yet: Wattproof: New System begins one.'))
    return undefined
  }
  const items = files.map((uri) => ({ label: workspace.asRelativePath(uri), uri }))
  return (await window.showQuickPick(items, { title: l10n.t('Review which system?') }))?.uri
}
