import { EventEmitter, Uri, commands, l10n, window, workspace, type Disposable } from 'vscode'

/** Documents of ours that nobody can change and that are on no disk. */
const scheme = 'wattproof-page'

/** Text by the path of its page, and what says that one has changed. */
const texts = new Map<string, string>()
const changed = new EventEmitter<Uri>()

export const answerPages = (): Disposable =>
  workspace.registerTextDocumentContentProvider(scheme, {
    onDidChange: changed.event,
    provideTextDocumentContent: ({ path }) => texts.get(path) ?? l10n.t('Run the command again to see this page.'),
  })

/** Shows Markdown in the editor's own preview; its text where an editor has no such extension. */
export async function showPage(name: string, text: string): Promise<void> {
  const page = Uri.from({ scheme, path: `${name}.md` })
  texts.set(page.path, text)
  changed.fire(page)
  try {
    await commands.executeCommand('markdown.showPreview', page)
  } catch {
    await window.showTextDocument(page)
  }
}
