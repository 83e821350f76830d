import type { Range, RenameFile, TextDocumentEdit, TextEdit, WorkspaceEdit } from 'vscode-languageserver'
import { ResponseError, ErrorCodes } from '../lsp.ts'
import { recordOfPath } from '../../records/kinds.ts'
import type { ReadFile } from '../../records/read-file.ts'
import { replaceNode } from '../../text/edits.ts'
import { nodeAtPointer } from '../../text/tree-queries.ts'
import type { Client } from '../client.ts'
import { besides, fileName } from '../addresses.ts'
import type { Here } from '../here.ts'
import { toRange, toTextEdit } from '../to-protocol.ts'
import type { Workspace } from '../workspace.ts'
import { recordsAt, referenceAt } from './references.ts'
import { sayIn } from '../../wording/phrase.ts'

/** Where a new id would be typed. Throws a reason where there is none to give. */
export function prepareRename(here: Here, offset: number): { range: Range; placeholder: string } {
  const file = onlyRecord(here, offset)
  const place = referenceAt(here, offset)
  const span = place?.field.span ?? here.checked.fields.get('/name')?.span ?? { start: offset, end: offset }
  return { range: toRange(here.checked.tree, span), placeholder: file.id }
}

/** Another id: the file's name and every place that names it. Throws a reason where that cannot be. */
export function rename(here: Here, offset: number, newId: string): WorkspaceEdit {
  const file = onlyRecord(here, offset)
  const id = newId.trim()
  const problem = problemWith(here, file, id)
  if (problem) throw refusal(problem)
  const oldUri = here.uriOf(file.path)
  const newUri = besides(oldUri, id + fileName(file.path).slice(file.id.length))
  const move: RenameFile = { kind: 'rename', oldUri, newUri, options: { overwrite: false } }
  return { documentChanges: [...textEdits(here.library.usesOf(file), id, here.uriOf), move] }
}

/** The edits that go with files being renamed by hand, in the form that the client takes. */
export function renamedFiles(
  workspace: Workspace,
  moved: readonly { from: string; to: string }[],
  uriOf: (path: string) => string,
  { documentChanges }: Client,
): WorkspaceEdit | null {
  const edits = moved.flatMap(({ from, to }) => {
    const file = workspace.library.file(from)
    const next = recordOfPath(to)
    if (!file || next?.kind !== file.kind || next.id === file.id) return []
    return textEdits(workspace.library.usesOf(file), next.id, uriOf)
  })
  if (edits.length === 0) return null
  const byFile = merged(edits)
  return documentChanges
    ? { documentChanges: byFile }
    : { changes: Object.fromEntries(byFile.map(({ textDocument, edits }) => [textDocument.uri, edits as TextEdit[]])) }
}

function onlyRecord(here: Here, offset: number): ReadFile {
  const say = sayIn(here.bundle)
  const [file, second] = recordsAt(here, offset)
  const id = referenceAt(here, offset)?.field.value
  if (!file)
    throw refusal(
      id === undefined
        ? say`Only the id of a record can be renamed, where it is used or at the name in its file.`
        : say`There is no record ${id}.`,
    )
  if (second) throw refusal(say`There are several records ${file.id}; rename the files first.`)
  if (file.kind === 'library') throw refusal(say`The settings of a library have a fixed name.`)
  if (!here.client.renameFiles)
    throw refusal(say`An id is a file name, and this editor cannot rename files for a language server.`)
  return file
}

function problemWith({ library, bundle }: Here, file: ReadFile, id: string): string | null {
  const say = sayIn(bundle)
  if (id === '') return say`An id has at least one character.`
  const wrong = /[\\/:*?"<>|#%\p{Cc}]|^[.\s-]/u.exec(id)?.[0]
  if (wrong) return say`An id becomes a file name, and ${JSON.stringify(wrong)} is not allowed in one.`
  const path = file.path.slice(0, -fileName(file.path).length) + id + fileName(file.path).slice(file.id.length)
  if (recordOfPath(path)?.id !== id) return say`${id} cannot be read from a file name.`
  if (id !== file.id && library.byId(file.kind, id, file.path).length > 0)
    return say`There is a ${file.kind} ${id} already.`
  return null
}

function textEdits(
  uses: ReturnType<Workspace['library']['usesOf']>,
  id: string,
  uriOf: (path: string) => string,
): TextDocumentEdit[] {
  const byFile = new Map<string, TextEdit[]>()
  for (const { file, field } of uses) {
    const node = nodeAtPointer(file.tree, field.pointer)
    if (!node) continue
    const uri = uriOf(file.path)
    byFile.set(uri, [...(byFile.get(uri) ?? []), toTextEdit(file.tree, replaceNode(file.tree, node, id))])
  }
  return [...byFile].map(([uri, edits]) => ({ textDocument: { uri, version: null }, edits }))
}

function merged(all: readonly TextDocumentEdit[]): TextDocumentEdit[] {
  const byFile = new Map<string, TextDocumentEdit>()
  for (const one of all) {
    const before = byFile.get(one.textDocument.uri)
    byFile.set(one.textDocument.uri, before ? { ...before, edits: [...before.edits, ...one.edits] } : one)
  }
  return [...byFile.values()]
}

const refusal = (reason: string) => new ResponseError(ErrorCodes.InvalidRequest, reason)
