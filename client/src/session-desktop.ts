import { Uri } from 'vscode'
import { LanguageClient, TransportKind } from 'vscode-languageclient/node'
import { sessionWith, type StartSession } from './session.ts'

export const startSession: StartSession = sessionWith(({ extensionUri }, options) => {
  const module = Uri.joinPath(extensionUri, 'dist', 'server.js').fsPath
  return new LanguageClient('wattproof', 'Wattproof', { module, transport: TransportKind.ipc }, options)
})
