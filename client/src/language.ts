import { l10n, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'

const setting = 'wattproof.language'

/** The language that a person chose; without a choice the server takes that of the editor. */
export function chosenLanguage(): { readonly language?: string } {
  const language = workspace.getConfiguration().get<string>(setting, 'auto')
  return language === 'auto' ? {} : { language }
}

/** A server speaks one language from its start to its end. */
export const restartWhenLanguageChanges = (client: BaseLanguageClient) =>
  workspace.onDidChangeConfiguration((change) => {
    if (change.affectsConfiguration(setting) && client.isRunning())
      client
        .stop()
        .then(() => client.start())
        .catch((error: unknown) => client.error(l10n.t('Wattproof could not start again'), error))
  })
