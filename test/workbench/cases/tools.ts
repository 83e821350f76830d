import {
  Range,
  Uri,
  WorkspaceEdit,
  commands,
  languages,
  window,
  workspace,
  type Diagnostic,
  type InlayHint,
  type TextDocument,
} from 'vscode'

// no assertions of Node's: the cases run in a browser too

export function holds(condition: unknown, message = 'that does not hold'): asserts condition {
  if (!condition) throw new Error(message)
}

export function same(actual: unknown, expected: unknown): void {
  const [is, wanted] = [JSON.stringify(actual), JSON.stringify(expected)]
  holds(is === wanted, `${is} is not ${wanted}`)
}

/** A file of the folder that the window shows. */
export function inFolder(path: string): Uri {
  const [folder] = workspace.workspaceFolders ?? []
  holds(folder, 'the window shows no folder')
  return Uri.joinPath(folder.uri, path)
}

async function show(path: string): Promise<TextDocument> {
  const document = await workspace.openTextDocument(inFolder(path))
  await window.showTextDocument(document, { preview: false })
  return document
}

/** A new file on disk, shown. */
export async function showNew(path: string, text: string): Promise<TextDocument> {
  await workspace.fs.writeFile(inFolder(path), bytes(text))
  return show(path)
}

export const bytes = (text: string) => new TextEncoder().encode(text)

/** As if it were typed. */
export async function replace(document: TextDocument, old: string, text: string): Promise<void> {
  const start = document.getText().indexOf(old)
  holds(start >= 0, `there is no ${old}`)
  const edit = new WorkspaceEdit()
  edit.replace(document.uri, new Range(document.positionAt(start), document.positionAt(start + old.length)), text)
  await workspace.applyEdit(edit)
}

/** Asks until the answer will do: an extension host sends no event when everything has settled. */
export async function soon<T>(
  what: string,
  ask: () => T | PromiseLike<T>,
  willDo: (answer: T) => boolean,
  limit = 20_000,
): Promise<T> {
  let answer = await ask()
  for (let spent = 0; !willDo(answer); spent += 50) {
    if (spent > limit) throw new Error(`waited in vain for ${what}; last: ${JSON.stringify(answer)}`)
    await new Promise((resolve) => setTimeout(resolve, 50))
    answer = await ask()
  }
  return answer
}

export const ours = (uri: Uri): Diagnostic[] =>
  languages.getDiagnostics(uri).filter(({ source }) => source === 'wattproof')

/** The rule that a finding is of. */
export function ruleOf({ code }: Diagnostic): string {
  return String(typeof code === 'object' ? code.value : code)
}

export const hasRule = (rule: string) => (findings: Diagnostic[]) =>
  findings.some((finding) => ruleOf(finding) === rule)

export async function hintsOf(document: TextDocument): Promise<string[]> {
  const whole = document.validateRange(new Range(0, 0, document.lineCount, 0))
  const hints = await commands.executeCommand<InlayHint[]>('vscode.executeInlayHintProvider', document.uri, whole)
  return hints.map(({ label }) => (typeof label === 'string' ? label : label.map(({ value }) => value).join('')).trim())
}
