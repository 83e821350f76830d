import type { CodeAction, SnippetTextEdit, TextEdit } from 'vscode-languageserver'
import { acceptanceFacts } from '../../check/acceptance-facts.ts'
import type { Finding, RuleFacts } from '../../findings/finding.ts'
import { appendComment, removeEntry } from '../../text/edits.ts'
import { lineAround } from '../../text/lines.ts'
import { isJson } from '../../text/spelling.ts'
import type { Edit, Span } from '../../text/span.ts'
import { nodeAtPointer } from '../../text/tree-queries.ts'
import type { Tree } from '../../text/tree.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { toRange, toTextEdit } from '../to-protocol.ts'

const aboutAcceptances: readonly RuleFacts[] = Object.values(acceptanceFacts)

type Action = Pick<CodeAction, 'title' | 'edit'>

/** Lets a doubt stand. The reason stays open for the person to give: without one the acceptance does not count. */
export function acceptance(here: Here, { rule, pointer }: Finding): Action | null {
  const { checked, client, uri, bundle } = here
  const { tree } = checked
  // what reading found is a mistake of typing, and an acceptance cannot be accepted
  if (aboutAcceptances.some(({ id }) => id === rule) || checked.readFindings().some((one) => one.rule === rule))
    return null
  const { span, text: before, after } = isJson(tree) ? inList(tree, rule, pointer) : inComment(tree, rule, pointer)
  const textDocument = { uri, version: null }
  const edit = client.snippetEdits
    ? { documentChanges: [{ textDocument, edits: [snippetEdit(tree, span, before, after)] }] }
    : { changes: { [uri]: [toTextEdit(tree, { span, text: before + after })] } }
  return { title: sayIn(bundle)`Accept ${rule} here; write the reason`, edit }
}

interface OpenEdit extends Edit {
  /** What follows the place of the reason. */
  readonly after: string
}

function inComment(tree: Tree, rule: string, pointer: string): OpenEdit {
  if (pointer !== '') return { ...appendComment(tree, pointer, `accept ${rule}: `), after: '' }
  const start = tree.text.startsWith('\uFEFF') ? 1 : 0
  return { span: { start, end: start }, text: `# accept ${rule}: `, after: tree.text.includes('\r\n') ? '\r\n' : '\n' }
}

/** JSON has no comments. */
function inList(tree: Tree, rule: string, pointer: string): OpenEdit {
  const text = `{ "rule": ${JSON.stringify(rule)}, "field": ${JSON.stringify(pointer)}, "because": "`
  const list = nodeAtPointer(tree, '/accepted')
  if (list?.kind === 'list') {
    const last = list.items.at(-1)
    const at = last ? last.span.end : list.span.start + 1
    return { span: { start: at, end: at }, text: (last ? ', ' : '') + text, after: '" }' }
  }
  const last = tree.root?.kind === 'map' ? tree.root.entries.at(-1) : undefined
  const at = last?.value?.span.end ?? (tree.root?.span.start ?? 0) + 1
  return { span: { start: at, end: at }, text: `${last ? ',' : ''}\n  "accepted": [${text}`, after: '" }]' }
}

function snippetEdit(tree: Tree, span: Span, before: string, after: string): SnippetTextEdit & TextEdit {
  const snippet = { kind: 'snippet' as const, value: `${forSnippet(before)}$1${forSnippet(after)}` }
  return { range: toRange(tree, span), snippet } as SnippetTextEdit & TextEdit
}

const forSnippet = (text: string) => text.replace(/[\\$}]/g, '\\$&')

/** Takes an acceptance out that matches nothing any more. */
export function removal({ checked: { tree }, uri, bundle }: Here, { rule, span }: Finding): Action | null {
  if (rule !== 'acceptance-unused') return null
  const edit = toTextEdit(tree, fromComment(tree, span) ?? fromList(tree, span))
  return { title: sayIn(bundle)`Remove this acceptance`, edit: { changes: { [uri]: [edit] } } }
}

/** The clause with what joins it to others; the whole comment, or its whole line, where nothing else is left. */
function fromComment({ text, comments }: Tree, clause: Span): Edit | null {
  const comment = comments.find(({ span }) => span.start <= clause.start && clause.end <= span.end)
  if (!comment) return null
  const before = text.slice(comment.span.start, clause.start)
  const after = text.slice(clause.end, comment.span.end)
  if (after.trim() !== '') return cut(clause.start, clause.end + /^\s*;\s*/.exec(after)![0].length)
  if (!/^#+\s*$/.test(before)) return cut(comment.span.start + withoutSemicolon(before).length, comment.span.end)
  const line = lineAround(text, comment.span.start)
  const typed = text.slice(line.start, comment.span.start)
  if (typed.trim() !== '') return cut(line.start + typed.trimEnd().length, comment.span.end)
  return cut(line.start, line.end + (/^\r?\n/.exec(text.slice(line.end))?.[0].length ?? 0))
}

function fromList(tree: Tree, { start, end }: Span): Edit {
  const list = nodeAtPointer(tree, '/accepted')
  const items = list?.kind === 'list' ? list.items.flatMap((item) => item ?? []) : []
  if (items.length < 2) return removeEntry(tree, '/accepted')
  const index = items.findIndex(({ span }) => span.start === start)
  const next = items[index + 1]
  const before = items[index - 1]
  if (list?.kind === 'list' && !list.flow) {
    const line = lineAround(tree.text, start)
    const last = lineAround(tree.text, Math.max(start, end))
    return cut(line.start, last.end + (/^\r?\n/.exec(tree.text.slice(last.end))?.[0].length ?? 0))
  }
  return next ? cut(start, next.span.start) : cut(before!.span.end, end)
}

const cut = (start: number, end: number): Edit => ({ span: { start, end }, text: '' })

function withoutSemicolon(text: string): string {
  const words = text.trimEnd()
  return words.endsWith(';') ? words.slice(0, -1).trimEnd() : text
}
