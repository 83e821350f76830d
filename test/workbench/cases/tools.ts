import { deepStrictEqual, ok } from 'node:assert'
import {
  Range,
  Uri,
  commands,
  languages,
  window,
  workspace,
  type Diagnostic,
  type InlayHint,
  type TextDocument,
} from 'vscode'

export { deepStrictEqual as same, ok as holds }

/** A file of the folder that the window shows. */
export function inFolder(path: string): Uri {
  const [folder] = workspace.workspaceFolders ?? []
  ok(folder, 'the window shows no folder')
  return Uri.joinPath(folder.uri, path)
}

async function show(path: string): Promise<TextDocument> {
  const document = await workspace.openTextDocument(inFolder(path))
  await window.showTextDocument(document)
  return document
}

/** A new file on disk, shown. */
export async function showNew(path: string, text: string): Promise<TextDocument> {
  await workspace.fs.writeFile(inFolder(path), Buffer.from(text))
  return show(path)
}

/** Asks until the answer will do: an extension host tells nobody when everything has settled. */
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
