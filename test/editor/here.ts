import { clientOf, type Client } from '../../server/src/editor/client.ts'
import type { Here } from '../../server/src/editor/here.ts'
import { createWorkspace } from '../../server/src/editor/workspace.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { toSpan } from '../../server/src/editor/to-protocol.ts'
import type { TextEdit } from 'vscode-languageserver'
import { cursor } from '../markers.ts'
import { bare, full } from './client.ts'

export const clients = {
  full: clientOf({ processId: null, rootUri: null, capabilities: full }, null),
  bare: clientOf({ processId: null, rootUri: null, capabilities: bare }, null),
}

const root = 'file:///library/'

/** One open record, with `$0` where the cursor is, and others beside it. */
export function hereAt(
  fixture: string,
  {
    name = 'tern.panel.yaml',
    others = {},
    client = clients.full,
  }: {
    name?: string
    others?: Readonly<Record<string, string>>
    client?: Client
  } = {},
) {
  const { source, offset } = cursor(fixture)
  const workspace = createWorkspace(() => '2026-11-25')
  const path = root + name
  for (const [other, text] of Object.entries(others)) workspace.put(root + other, text)
  workspace.put(path, source)
  const here: Here = {
    uri: path,
    path,
    checked: workspace.check(path)!,
    library: workspace.library,
    client,
    today: '2026-11-25',
    check: workspace.check,
    uriOf: (p) => p,
  }
  return { here, offset, source, workspace }
}

/** A file after text edits of the protocol. */
export function applied(source: string, edits: readonly TextEdit[]): string {
  const tree = readTree(source)
  return applyEdits(
    source,
    edits.map(({ range, newText }) => ({ span: toSpan(tree, range), text: newText })),
  )
}
