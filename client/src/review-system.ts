import { commands, l10n, window, workspace, type Uri } from 'vscode'
import { isSystem, skippedGlob } from './records.ts'

/** Opens what is found in a system and, beside it, its figures: the one that is open, else one that a person picks. */
export async function reviewSystem(showBeside: () => void, wanted: Uri | undefined): Promise<void> {
  const system = await systemFor(wanted, l10n.t('Review which system?'))
  if (!system) return
  await window.showTextDocument(system)
  showBeside()
  await commands.executeCommand('workbench.actions.view.problems')
}

/** The system that a menu names, that is open, or that a person picks. */
export async function systemFor(wanted: Uri | undefined, title: string): Promise<Uri | undefined> {
  const open = wanted ?? window.activeTextEditor?.document.uri
  if (open && isSystem(open.path)) return open
  const files = await workspace.findFiles('**/*.system.{yaml,yml,json}', skippedGlob)
  if (files.length === 0) {
    void window.showInformationMessage(l10n.t('There is no system here yet: Wattproof: New System begins one.'))
    return undefined
  }
  const items = files.map((uri) => ({ label: workspace.asRelativePath(uri), uri }))
  return (await window.showQuickPick(items, { title }))?.uri
}
