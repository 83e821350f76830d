import { Uri, extensions, l10n, window, type ExtensionContext } from 'vscode'
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient'
import { recordGlobs, schemes, type InitializationOptions } from '../../server/src/editor/protocol.ts'
import { createBeside } from './beside.ts'
import type { Run } from './command-names.ts'
import { commandsOf } from './commands.ts'
import { answerFiles } from './library-files.ts'
import { chosenLanguage, restartWhenLanguageChanges } from './language.ts'
import { answerPages } from './pages.ts'
import { showSummary } from './summary.ts'
import { showReferences } from './show-references.ts'

/** What the entry can do once the language server is there. */
export interface Session {
  readonly run: Run
}
export type StartSession = (context: ExtensionContext) => Promise<Session>

type MakeClient = (context: ExtensionContext, options: LanguageClientOptions) => BaseLanguageClient

/** A session with the language server that `make` starts: in a process on the desktop, in a worker in a browser. */
export function sessionWith(make: MakeClient): StartSession {
  return async (context) => {
    const log = window.createOutputChannel('Wattproof', { log: true })
    const client = make(context, {
      documentSelector: schemes.flatMap((scheme) => recordGlobs.map((pattern) => ({ scheme, pattern }))),
      outputChannel: log,
      initializationOptions: () => initializationOptions(context),
      connectionOptions: { maxRestartCount: 4 }, // within three minutes; then it says so and stays down
      markdown: { isTrusted: false, supportHtml: false },
    })
    answerFiles(client)
    context.subscriptions.push(
      log,
      client,
      showReferences(client),
      restartWhenYamlCheckerComesOrGoes(client),
      restartWhenLanguageChanges(client),
    )
    await client.start()
    const beside = createBeside(context, client)
    context.subscriptions.push(beside, showSummary(), answerPages())
    return { run: commandsOf(context, client, beside) }
  }
}

const initializationOptions = ({ extensionUri }: ExtensionContext): InitializationOptions => ({
  pictures: Uri.joinPath(extensionUri, 'dist', 'pictures.js').toString(true),
  sheetReader: Uri.joinPath(extensionUri, 'dist', 'web', 'sheet-reader.js').toString(true),
  ...chosenLanguage(),
  languages: Uri.joinPath(extensionUri, 'dist', 'languages').toString(true),
  syntaxElsewhere: yamlIsCheckedElsewhere(),
  clientFiles: true,
  rulePage: `command:wattproof.showRule?${encodeURIComponent('"')}{rule}${encodeURIComponent('"')}`,
  showReferences: 'wattproof.showReferences',
})

/** True where an enabled extension reports plain YAML syntax already, so that nothing is said twice. */
function yamlIsCheckedElsewhere(): boolean {
  return extensions.getExtension('redhat.vscode-yaml') !== undefined
}

function restartWhenYamlCheckerComesOrGoes(client: BaseLanguageClient) {
  let before = yamlIsCheckedElsewhere()
  return extensions.onDidChange(() => {
    const now = yamlIsCheckedElsewhere()
    if (now !== before && client.isRunning()) {
      client
        .stop()
        .then(() => client.start())
        .catch((error: unknown) => client.error(l10n.t('Wattproof could not start again'), error))
    }
    before = now
  })
}
