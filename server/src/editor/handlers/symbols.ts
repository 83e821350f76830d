import type { DocumentSymbol, SymbolInformation } from 'vscode-languageserver'
import { SymbolKind } from '../lsp.ts'
import { entryEnd } from '../../text/read-node.ts'
import type { Entry, Node, Tree } from '../../text/tree.ts'
import type { Here } from '../here.ts'
import { titleOf } from '../summary.ts'
import { toRange } from '../to-protocol.ts'
import type { Workspace } from '../workspace.ts'

/** The outline: every field with its value. */
export function documentSymbols({ checked: { tree }, client, uri }: Here): DocumentSymbol[] | SymbolInformation[] {
  const symbols = childrenOf(tree, tree.root)
  return client.symbolTree ? symbols : symbols.flatMap((one) => flattened(one, uri))
}

/** Records whose name or id holds the letters of `query` in their order. */
export function workspaceSymbols(
  { library }: Workspace,
  query: string,
  uriOf: (path: string) => string,
): SymbolInformation[] {
  const asked = query.toLowerCase()
  return library.paths().flatMap((path) => {
    const file = library.file(path)!
    const name = titleOf(file)
    if (!hasLetters(`${name} ${file.id}`.toLowerCase(), asked)) return []
    const location = { uri: uriOf(file.path), range: toRange(file.tree, { start: 0, end: 0 }) }
    return [
      {
        name: name === file.id ? name : `${name} (${file.id})`,
        kind: SymbolKind.Object,
        containerName: file.kind,
        location,
      },
    ]
  })
}

function hasLetters(text: string, letters: string): boolean {
  let at = -1
  return [...letters].every((letter) => (at = text.indexOf(letter, at + 1)) >= 0)
}

function childrenOf(tree: Tree, node: Node | null): DocumentSymbol[] {
  if (node?.kind === 'map') return node.entries.map((entry) => ofEntry(tree, entry))
  if (node?.kind !== 'list') return []
  return node.items.flatMap((item, index) => (item && item.kind !== 'scalar' ? [ofItem(tree, item, index)] : []))
}

function ofEntry(tree: Tree, entry: Entry): DocumentSymbol {
  const { key, keySpan, value } = entry
  const end = Math.max(keySpan.end, entryEnd(entry))
  return {
    name: key.trim() || '(no name)',
    ...(value?.kind === 'scalar' && { detail: value.text }),
    kind: kindOf(value),
    range: toRange(tree, { start: keySpan.start, end }),
    selectionRange: toRange(tree, keySpan),
    children: childrenOf(tree, value),
  }
}

function ofItem(tree: Tree, item: Node, index: number): DocumentSymbol {
  const range = toRange(tree, item.span)
  const name = item.kind === 'map' ? (scalarOf(item, 'id') ?? scalarOf(item, 'name')) : null
  return {
    name: name ?? `${index + 1}`,
    kind: kindOf(item),
    range,
    selectionRange: range,
    children: childrenOf(tree, item),
  }
}

function scalarOf(node: Node, key: string): string | null {
  const value = node.kind === 'map' ? node.entries.find((entry) => entry.key === key)?.value : null
  return value?.kind === 'scalar' && value.text !== '' ? value.text : null
}

function kindOf(node: Node | null): SymbolKind {
  if (node === null) return SymbolKind.Null
  if (node.kind === 'map') return SymbolKind.Object
  if (node.kind === 'list') return SymbolKind.Array
  return /^[-+.\d]/.test(node.text) ? SymbolKind.Number : SymbolKind.String
}

function flattened(
  { name, kind, range, children = [] }: DocumentSymbol,
  uri: string,
  containerName?: string,
): SymbolInformation[] {
  const own = { name, kind, location: { uri, range }, ...(containerName !== undefined && { containerName }) }
  return [own, ...children.flatMap((child) => flattened(child, uri, name))]
}
