import { commands, l10n, window, workspace, type ExtensionContext } from 'vscode'
import { commandNames } from './command-names.ts'
import { isRecord, skippedGlob } from './records.ts'
import type { Session, StartSession } from './session.ts'

/**
 * Waits for the first record or library before anything heavy is loaded: this runs in every window that has a YAML or
 * JSON file open.
 */
export function waitForRecord(context: ExtensionContext, start: () => StartSession): void {
  let session: Promise<Session> | undefined
  const begin = () => (session ??= start()(context))
  const failed = (error: unknown) => window.showErrorMessage(l10n.t('Wattproof could not start: {0}', String(error)))
  const beginFor = ({ uri }: { uri: { path: string } }) => {
    if (isRecord(uri.path)) begin().catch(failed)
  }

  context.subscriptions.push(
    workspace.onDidOpenTextDocument(beginFor),
    ...commandNames.map((name) =>
      commands.registerCommand(`wattproof.${name}`, async (argument?: unknown) => (await begin()).run[name](argument)),
    ),
  )
  workspace.textDocuments.forEach(beginFor)
  workspace
    .findFiles('**/wattproof.{yaml,yml}', skippedGlob, 1)
    .then(([library]) => (library ? begin() : undefined))
    .then(undefined, failed)
}
