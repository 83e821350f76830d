import { Uri, type ExtensionContext } from 'vscode'
import { LanguageClient } from 'vscode-languageclient/browser'
import { waitForRecord } from './entry.ts'
import { sessionWith } from './session.ts'
import { startWorker } from './worker-connection.ts'

/** A browser loads one file and has no `require` of its own, so the client is in this bundle. */
export function activate(context: ExtensionContext): void {
  waitForRecord(context, () => startSession)
}

const startSession = sessionWith(({ extensionUri }, options) => {
  const address = Uri.joinPath(extensionUri, 'dist', 'web', 'server.js').toString(true)
  return new LanguageClient('wattproof', 'Wattproof', async () => startWorker(address), options)
})
