import { Uri, l10n, languages, window, workspace, type ExtensionContext } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { rulePageRequest, type RulePage } from '../../server/src/editor/protocol.ts'
import { showPage } from './pages.ts'

/** Opens the page of a rule: of the one that is named, else of one that a person picks, those at the cursor first. */
export async function showRule(
  client: BaseLanguageClient,
  { extensionUri }: ExtensionContext,
  named: unknown,
): Promise<void> {
  const pages = await pagesIn(extensionUri)
  const rule = typeof named === 'string' ? named : await picked([...pages.keys()])
  const page = pages.get(rule ?? '')
  if (rule === undefined || page === undefined) return
  const { text } = await client.sendRequest<RulePage>(rulePageRequest, { text: page })
  await showPage(rule, text)
}

async function picked(rules: readonly string[]): Promise<string | undefined> {
  const here = rulesHere()
  const items = [...new Set([...here, ...rules])].map((label) => ({
    label,
    ...(here.includes(label) && { description: l10n.t('at the cursor') }),
  }))
  return (await window.showQuickPick(items, { title: l10n.t('The page of a rule') }))?.label
}

/** Of the findings that the cursor is in. */
function rulesHere(): readonly string[] {
  const editor = window.activeTextEditor
  if (!editor) return []
  const findings = languages.getDiagnostics(editor.document.uri)
  return findings
    .filter(({ source, range }) => source === 'wattproof' && range.contains(editor.selection.active))
    .flatMap(({ code }) => (typeof code === 'object' ? String(code.value) : []))
}

/** The text of each rule by its id, of the reference that is in the package: a network is not needed. */
async function pagesIn(extensionUri: Uri): Promise<ReadonlyMap<string, string>> {
  const bytes = await workspace.fs.readFile(Uri.joinPath(extensionUri, 'schemas', 'rules.md'))
  const parts = new TextDecoder().decode(bytes).split(/^### /m).slice(1)
  // the title of the next group of rules is no part of the rule before it
  return new Map(parts.map((part) => [part.slice(0, part.search(/\s/)), `# ${part.replace(/\n## [^]*$/, '')}`]))
}
