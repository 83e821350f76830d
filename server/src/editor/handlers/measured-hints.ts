import type { InlayHint } from 'vscode-languageserver'
import { nodeAtPointer } from '../../text/tree-queries.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { toPosition } from '../to-protocol.ts'

/** The expected value right after each measured one: there are several in a line, and each belongs to its own. */
export function measuredHints({
  checked,
  uri,
  bundle,
}: Here): readonly { readonly at: number; readonly hint: InlayHint }[] {
  const { tree } = checked
  return checked.values().flatMap(({ id, text, pointer }) => {
    const node = ofMeasurement.test(id) ? nodeAtPointer(tree, pointer) : null
    if (!node) return []
    const label = id.endsWith('/power_left') ? sayIn(bundle)` ${text} left` : ` (${text})`
    return [
      { at: node.span.end, hint: { position: toPosition(tree, node.span.end), label, data: { uri, values: [id] } } },
    ]
  })
}

const ofMeasurement = /^measurements\//
