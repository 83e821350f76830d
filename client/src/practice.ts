import {
  DiagnosticSeverity,
  type Disposable,
  Uri,
  commands,
  languages,
  window,
  workspace,
  type ExtensionContext,
  type TextDocument,
} from 'vscode'

/** Set once the record has been corrected: the last step of the walkthrough waits for it. */
const corrected = 'wattproof.practiceCorrected'

/** Opens a record of an invented panel with one typing mistake, to be corrected. It is in no folder and nothing is written. */
export async function openPracticeRecord({ extensionUri, subscriptions }: ExtensionContext): Promise<void> {
  const source = Uri.joinPath(extensionUri, 'client', 'media', 'walkthrough', 'practice.panel.yaml')
  const content = new TextDecoder().decode(await workspace.fs.readFile(source))
  const target = Uri.from({ scheme: 'untitled', path: '/practice.panel.yaml' })
  const document = await workspace.openTextDocument(target)
  const editor = await window.showTextDocument(document)
  if (document.getText() === '') await editor.edit((edit) => edit.insert(document.positionAt(0), content))
  await commands.executeCommand('setContext', corrected, false)
  subscriptions.push(whenCorrected(document, () => void commands.executeCommand('setContext', corrected, true)))
}

/** Calls back once when the record had a mistake and has none any more. */
function whenCorrected({ uri }: TextDocument, done: () => void): Disposable {
  let wasWrong = false
  const heard = languages.onDidChangeDiagnostics(({ uris }) => {
    if (!uris.some((one) => one.toString() === uri.toString())) return
    const isWrong = languages
      .getDiagnostics(uri)
      .some(({ source, severity }) => source === 'wattproof' && severity <= DiagnosticSeverity.Warning)
    if (wasWrong && !isWrong) {
      heard.dispose()
      done()
    }
    wasWrong ||= isWrong
  })
  return heard
}
