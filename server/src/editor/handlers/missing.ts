import type { CodeAction, TextEdit } from 'vscode-languageserver'
import type { Finding } from '../../findings/finding.ts'
import type { FieldInfo } from '../../records/field-info.ts'
import { infoAt } from '../../records/info-at.ts'
import { schemas } from '../../records/schemas.generated.ts'
import { panelRules } from '../../rules/panel/index.generated.ts'
import { insertEntry } from '../../text/edits.ts'
import { parentPointer, pointerKeys } from '../../text/pointer.ts'
import type { Edit } from '../../text/span.ts'
import { nodeAtPointer } from '../../text/tree-queries.ts'
import type { Tree } from '../../text/tree.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { CodeActionKind } from '../lsp.ts'
import { toRange, toTextEdit } from '../to-protocol.ts'

/** A field that a record lacks, with the hint that says what it costs. */
interface Missing {
  readonly field: string
  readonly finding: Finding
}

export function missingIn({ checked }: Here): readonly Missing[] {
  return checked.findings.flatMap((finding) => {
    const rule = panelRules.find(({ id }) => id === finding.rule)
    return rule && 'field' in rule && typeof rule.field === 'string' ? [{ field: rule.field, finding }] : []
  })
}

/** `noct temperature` */
export const wordsOf = (field: string): string => pointerKeys(field).join(' ')

/** Puts a field in that is missing, with its unit, and the cursor where its number belongs. */
export function addition(here: Here, { field }: Missing): CodeAction | null {
  const { checked, client, uri, bundle } = here
  const { tree, kind } = checked
  const root = schemas[kind]
  const added = root && placeFor(tree, root, field)
  if (!added) return null
  const { span, text } = added
  const textDocument = { uri, version: null }
  const [before = '', after = ''] = text.split(stand)
  const snippet = `${forSnippet(before)}$1${forSnippet(after)}`
  const edit = client.snippetEdits
    ? { range: toRange(tree, span), snippet: { kind: 'snippet' as const, value: snippet } }
    : toTextEdit(tree, { span, text: before + after })
  return {
    title: sayIn(bundle)`Add ${wordsOf(field)}`,
    kind: CodeActionKind.QuickFix,
    edit: client.snippetEdits
      ? { documentChanges: [{ textDocument, edits: [edit] }] }
      : { changes: { [uri]: [edit as TextEdit] } },
  }
}

/** Stands where the number is typed. */
const stand = 'w__w'

function placeFor(tree: Tree, root: FieldInfo, field: string): Edit | null {
  const [group, key] = [parentPointer(field), pointerKeys(field).at(-1)!]
  const unit = /\d\s+([^\d\s]\S*)$/.exec(infoAt(root, field)?.examples?.[0] ?? '')?.[1]
  const value = unit ? `${stand} ${unit}` : stand
  if (group === '' || nodeAtPointer(tree, group)?.kind === 'map')
    return insertEntry(tree, group, key, value, before(tree, root, group, key))
  const name = pointerKeys(group).at(-1)!
  const edit = insertEntry(tree, parentPointer(group), name, stand, before(tree, root, parentPointer(group), name))
  return { ...edit, text: edit.text.replace(stand, `{ ${key}: ${value} }`) }
}

/** The last field of a group that is there and that the schema has before another. */
function before(tree: Tree, root: FieldInfo, group: string, key: string): string | undefined {
  const node = nodeAtPointer(tree, group)
  const order = ((group === '' ? root : infoAt(root, group))?.fields ?? []).map((one) => one.key)
  const earlier = new Set(order.slice(0, order.indexOf(key)))
  return node?.kind === 'map' ? node.entries.findLast((entry) => earlier.has(entry.key))?.key : undefined
}

const forSnippet = (text: string) => text.replace(/[\\$}]/g, '\\$&')
