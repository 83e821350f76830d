import { Uri, extensions, window, type ExtensionContext } from 'vscode'
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient'
import { recordGlobs, schemes, type InitializationOptions } from '../../server/src/editor/protocol.ts'
import type { Side } from './beside-messages.ts'
import { createBeside } from './beside.ts'
import { answerFiles } from './library-files.ts'
import { newFromSheet } from './new-from-sheet.ts'
import { newRecord } from './new-record.ts'
import { reviewSystem } from './review-system.ts'
import { savePage } from './save-page.ts'
import { showReferences } from './show-references.ts'

/** What the entry can do once the language server is there. */
export interface Session {
  newRecord(kind: string): Promise<void>
  newFromSheet(): Promise<void>
  showBeside(side: Side): void
  reviewSystem(): Promise<void>
  savePage(system: Uri | undefined): Promise<void>
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
    context.subscriptions.push(log, client, showReferences(client), restartWhenYamlCheckerComesOrGoes(client))
    await client.start()
    const beside = createBeside(context, client)
    return {
      newRecord: (kind) => newRecord(client, kind),
      newFromSheet: () => newFromSheet(client),
      showBeside: (side) => beside.show(side),
      reviewSystem: () => reviewSystem(() => beside.show('pictures')),
      savePage: (system) => savePage(client, system),
    }
  }
}

const initializationOptions = ({ extensionUri }: ExtensionContext): InitializationOptions => ({
  pictures: Uri.joinPath(extensionUri, 'dist', 'pictures.js').toString(true),
  sheetReader: Uri.joinPath(extensionUri, 'dist', 'web', 'sheet-reader.js').toString(true),
  languages: Uri.joinPath(extensionUri, 'dist', 'languages').toString(true),
  syntaxElsewhere: yamlIsCheckedElsewhere(),
  clientFiles: true,
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
        .catch((error: unknown) => client.error('Wattproof could not start again', error))
    }
    before = now
  })
}
