import {
  Uri,
  ViewColumn,
  commands,
  l10n,
  window,
  workspace,
  type ExtensionContext,
  type TextEditor,
  type WebviewPanel,
} from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import {
  comparisonRequest,
  fieldRequest,
  picturesRequest,
  placeRequest,
  changedNotification,
  sheetRequest,
  type ComparisonResult,
  type FieldResult,
  type PicturesResult,
  type PlaceResult,
  type SheetResult,
} from '../../server/src/editor/protocol.ts'
import type { FromView, Side, ToView } from './beside-messages.ts'
import { besideHtml } from './beside-html.ts'
import { offerAddition, pdfAt } from './beside-sheet.ts'
import { hasPictures, isPanel } from './records.ts'

/** The view next to the editor: one a window, which shows the record that is edited. */
export interface Beside {
  /** Opens it, or brings it to the front. Only panels have a sheet: of other records it shows the pictures. */
  show(side: Side, file?: Uri): void
  dispose(): void
}

export function createBeside({ extensionUri }: ExtensionContext, client: BaseLanguageClient): Beside {
  let panel: WebviewPanel | undefined
  let shown: Uri | undefined
  let side: Side = 'pictures'
  let pdf: string | undefined
  let ready = false
  let busy = false
  let again = false

  const editorOf = (uri: Uri | undefined) =>
    window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri?.toString())
  const about = (uri: Uri) => ({ textDocument: { uri: client.code2ProtocolConverter.asUri(uri) } })
  const send = (message: ToView) => void panel?.webview.postMessage(message)

  const heard = [
    window.onDidChangeActiveTextEditor((editor) => editor && follow(editor)),
    workspace.onDidChangeTextDocument(({ document }) => {
      if (document.uri.toString() === shown?.toString()) refresh()
    }),
    window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor.document.uri.toString() === shown?.toString()) markField(textEditor)
    }),
    client.onNotification(changedNotification, refresh),
  ]

  return {
    show(wanted, file) {
      side = wanted
      const uri = file ?? window.activeTextEditor?.document.uri
      if (uri && hasPictures(uri.path)) shown = uri
      if (panel) panel.reveal(panel.viewColumn, true)
      else open()
      refresh()
    },
    dispose() {
      heard.forEach((one) => one.dispose())
      panel?.dispose()
    },
  }

  function open() {
    const folder = Uri.joinPath(extensionUri, 'dist', 'view')
    panel = window.createWebviewPanel(
      'wattproof.beside',
      l10n.t('Beside the record'),
      { viewColumn: ViewColumn.Beside, preserveFocus: true },
      { enableScripts: true, localResourceRoots: [folder], retainContextWhenHidden: false },
    )
    panel.webview.onDidReceiveMessage((message: FromView) => void hear(message).catch(failed))
    panel.onDidDispose(() => {
      panel = undefined
      ready = false
    })
    panel.webview.html = besideHtml(panel.webview, folder)
  }

  function follow(editor: TextEditor) {
    if (!panel || !hasPictures(editor.document.uri.path)) return
    shown = editor.document.uri
    refresh()
  }

  /** One question at a time; what changed meanwhile is asked for once more behind it. */
  function refresh() {
    if (!panel || !ready || !shown) return
    again = true
    if (busy) return
    busy = true
    void ask()
      .catch(failed)
      .finally(() => (busy = false))
  }

  async function ask() {
    while (again && shown) {
      again = false
      const uri = shown
      const message = side === 'sheet' && isPanel(uri.path) ? await sheetOf(uri) : await picturesOf(uri)
      if (uri !== shown) continue
      send(message)
      const editor = editorOf(uri)
      if (editor) markField(editor)
    }
  }

  async function picturesOf(uri: Uri): Promise<ToView> {
    const pictures = await client.sendRequest<PicturesResult>(picturesRequest, about(uri))
    if (panel) panel.title = pictures?.title ?? l10n.t('Beside the record')
    return { type: 'show', pictures, hasSheet: isPanel(uri.path) }
  }

  async function sheetOf(uri: Uri): Promise<ToView> {
    const sheet = await client.sendRequest<SheetResult>(sheetRequest, about(uri))
    pdf = sheet && 'file' in sheet ? sheet.file : undefined
    if (panel) panel.title = sheet?.source ?? l10n.t('Beside the record')
    return { type: 'sheet', sheet }
  }

  function markField({ document, selection }: TextEditor) {
    if (!panel || !ready) return
    const position = client.code2ProtocolConverter.asPosition(selection.active)
    client
      .sendRequest<FieldResult>(fieldRequest, { ...about(document.uri), position })
      .then((field) => send({ type: 'field', field }))
      .catch(failed)
  }

  async function hear(message: FromView): Promise<unknown> {
    if (message.type === 'ready') {
      ready = true
      return refresh()
    }
    if (!shown) return
    switch (message.type) {
      case 'compare': {
        const params = { ...about(shown), surface: message.surface }
        return send({
          type: 'compared',
          comparison: await client.sendRequest<ComparisonResult>(comparisonRequest, params),
        })
      }
      case 'page':
        return commands.executeCommand('wattproof.savePage', shown)
      case 'side':
        side = message.side
        return refresh()
      case 'pdf':
        return send({ type: 'pdf', bytes: pdf === undefined ? null : await pdfAt(pdf) })
      case 'add':
        return offerAddition(client, shown, message.field)
      case 'reveal':
        return reveal(message.field)
    }
  }

  async function reveal(field: string) {
    const place = await client.sendRequest<PlaceResult>(placeRequest, { ...about(shown!), field })
    if (!place) return
    const { uri, range } = client.protocol2CodeConverter.asLocation(place)
    const viewColumn = editorOf(uri)?.viewColumn ?? editorOf(shown)?.viewColumn ?? ViewColumn.One
    await window.showTextDocument(uri, { selection: range, viewColumn })
  }

  function failed(error: unknown) {
    client.error(l10n.t('The view beside the editor'), error, false)
  }
}
