import { commands, type Disposable } from 'vscode'
import type { BaseLanguageClient, Location, Position } from 'vscode-languageclient'

/** What a code lens of the server calls: it knows places of the protocol, the editor's own command wants its own. */
export function showReferences(client: BaseLanguageClient): Disposable {
  return commands.registerCommand('wattproof.showReferences', async (uri: string, at: Position, places: Location[]) => {
    const { asUri, asPosition, asLocation } = client.protocol2CodeConverter
    await commands.executeCommand('editor.action.showReferences', asUri(uri), asPosition(at), places.map(asLocation))
  })
}
