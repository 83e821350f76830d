import { commands, window, workspace, type ExtensionContext, type Uri } from 'vscode'
import { isRecord, skippedGlob } from './records.ts'
import type { Session, StartSession } from './session.ts'

/** Commands that begin a record, by its kind. */
const newCommands = {
  'wattproof.newPanelRecord': 'panel',
  'wattproof.newControllerRecord': 'controller',
  'wattproof.newBatteryRecord': 'battery',
  'wattproof.newClimateRecord': 'climate',
  'wattproof.newSystem': 'system',
} as const

/**
 * Waits for the first record or library before anything heavy is loaded: this runs in every window that has a YAML or
 * JSON file open.
 */
export function waitForRecord(context: ExtensionContext, start: () => StartSession): void {
  let session: Promise<Session> | undefined
  const begin = () => (session ??= start()(context))
  const failed = (error: unknown) => window.showErrorMessage(`Wattproof could not start: ${String(error)}`)
  const beginFor = ({ uri }: { uri: { path: string } }) => {
    if (isRecord(uri.path)) begin().catch(failed)
  }

  context.subscriptions.push(
    workspace.onDidOpenTextDocument(beginFor),
    ...Object.entries(newCommands).map(([command, kind]) =>
      commands.registerCommand(command, async () => (await begin()).newRecord(kind)),
    ),
    commands.registerCommand('wattproof.reviewSystem', async () => (await begin()).reviewSystem()),
    commands.registerCommand('wattproof.newPanelFromSheet', async () => (await begin()).newFromSheet()),
    commands.registerCommand('wattproof.showBeside', async () => (await begin()).showBeside('pictures')),
    commands.registerCommand('wattproof.showSheet', async () => (await begin()).showBeside('sheet')),
    commands.registerCommand('wattproof.savePage', async (system?: Uri) => (await begin()).savePage(system)),
  )
  workspace.textDocuments.forEach(beginFor)
  workspace
    .findFiles('**/wattproof.{yaml,yml}', skippedGlob, 1)
    .then(([library]) => (library ? begin() : undefined))
    .then(undefined, failed)
}
