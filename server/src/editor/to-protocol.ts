import type { Diagnostic, MarkupContent, Position, Range, TextEdit } from 'vscode-languageserver'
import type { Finding, Severity } from '../findings/finding.ts'
import { lineStarts, offsetAt, positionAt } from '../text/lines.ts'
import type { Edit, Span } from '../text/span.ts'
import type { Tree } from '../text/tree.ts'
import type { Client } from './client.ts'

/** Where a place lies in a text needs no more than that. */
export type Text = Pick<Tree, 'text'>

const starts = new WeakMap<Text, readonly number[]>()

function startsOf(tree: Text): readonly number[] {
  const known = starts.get(tree) ?? lineStarts(tree.text)
  starts.set(tree, known)
  return known
}

export const toPosition = (tree: Text, offset: number): Position => positionAt(startsOf(tree), offset)

export const toRange = (tree: Text, { start, end }: Span): Range => ({
  start: toPosition(tree, start),
  end: toPosition(tree, end),
})

export const toOffset = (tree: Tree, position: Position): number => offsetAt(startsOf(tree), position, tree.text)

export const toSpan = (tree: Tree, { start, end }: Range): Span => ({
  start: toOffset(tree, start),
  end: toOffset(tree, end),
})

export const toTextEdit = (tree: Tree, { span, text }: Edit): TextEdit => ({
  range: toRange(tree, span),
  newText: text,
})

/** Further places that a finding names; editors write each in a line of its own. */
const room = 3

const severities: Readonly<Record<Severity, 1 | 2 | 3 | 4>> = { error: 1, warning: 2, information: 3, hint: 4 }
const unnecessary = 1

/** `where` gives the address and the tree of a related place in another file. */
export function toDiagnostic(
  finding: Finding,
  tree: Text,
  uri: string,
  client: Client,
  where: (path: string) => { readonly uri: string; readonly tree: Text } | null,
): Diagnostic {
  const related = finding.related.slice(0, room).flatMap(({ span, message, path }) => {
    const place = path === undefined ? { uri, tree } : where(path)
    return place ? [{ location: { uri: place.uri, range: toRange(place.tree, span) }, message }] : []
  })
  return {
    range: toRange(tree, finding.span),
    severity: severities[finding.severity],
    code: finding.rule,
    ...(client.rulePage !== null && { codeDescription: { href: client.rulePage.replace('{rule}', finding.rule) } }),
    source: 'wattproof',
    message: finding.message,
    ...(client.relatedInformation && related.length > 0 && { relatedInformation: related }),
    ...(client.unnecessaryTag && finding.rule === 'acceptance-unused' && { tags: [unnecessary] }),
    data: { rule: finding.rule, pointer: finding.pointer },
  }
}

/** A hover or an explanation in the form that the client shows. */
export function toMarkup(client: Client, markdown: string): MarkupContent {
  return client.markdown ? { kind: 'markdown', value: markdown } : { kind: 'plaintext', value: plainText(markdown) }
}

/** Characters of a record that markdown would take for its own. */
export const escaped = (text: string) => text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&')

const plainText = (markdown: string) =>
  markdown
    .replace(/\*\*/g, '')
    .replace(/(?<!\\)_/g, '')
    .replace(/ {2}\n/g, '\n')
    .replace(/\\([\\`*_{}[\]<>#|~])/g, '$1')
