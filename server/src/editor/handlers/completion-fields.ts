import type { CompletionItem } from 'vscode-languageserver'
import { CompletionItemKind, InsertTextFormat } from '../lsp.ts'
import { allFacts } from '../../check/facts.ts'
import type { FieldInfo } from '../../records/field-info.ts'
import { translated } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'
import { lineAround } from '../../text/lines.ts'
import type { Here } from '../here.ts'
import type { Slot } from '../slot.ts'
import { toRange } from '../to-protocol.ts'
import { formSnippet, isGroup, valueSnippet } from './snippets.ts'

/** Fields that are not there yet, required ones first, each with the cursor where its value begins. */
export function fieldItems(here: Here, slot: Slot): CompletionItem[] {
  const fields = slot.info.type === 'map' ? rulesAsFields(slot.info) : (slot.info.fields ?? [])
  const each = fields
    .map((field, index) => ({ field, rank: (field.required ? 0 : 500) + index }))
    .filter(({ field }) => !slot.present.has(field.key))
    .map(({ field, rank }) => fieldItem(here, slot, field, rank))
  return [...each, ...formItem(here, slot, fields)]
}

/** The one map that records have is by rule. */
const rulesAsFields = ({ item }: FieldInfo): FieldInfo[] =>
  item
    ? allFacts.flatMap(({ rules }) =>
        rules.map(({ id, reason }) => ({ ...item, key: id, title: id, description: reason })),
      )
    : []

function fieldItem({ checked, client, bundle }: Here, slot: Slot, field: FieldInfo, rank: number): CompletionItem {
  const key = slot.json ? JSON.stringify(field.key) : field.key
  const example = field.examples?.[0]
  const say = sayIn(bundle)
  const rest = slot.hasColon
    ? ''
    : client.snippets
      ? `: ${valueSnippet(field, slot)}`.trimEnd()
      : isGroup(field) && !slot.flow
        ? ':'
        : ': '
  return {
    label: field.key,
    kind: isGroup(field) ? CompletionItemKind.Struct : CompletionItemKind.Field,
    detail: `${translated(field.symbol ?? field.title, bundle)}${field.required ? say`, required` : ''}`,
    documentation: `${translated(field.description, bundle)}${example ? say` Such as ${example}.` : ''}`,
    sortText: String(rank).padStart(3, '0'),
    filterText: key,
    ...(client.snippets && { insertTextFormat: InsertTextFormat.Snippet }),
    textEdit: { range: toRange(checked.tree, slot.span), newText: key + rest },
  }
}

/** All that a group must have and lacks, for an editor that goes from one place to be filled in to the next. */
function formItem({ checked, client, bundle }: Here, slot: Slot, fields: readonly FieldInfo[]): CompletionItem[] {
  const required = fields.filter(({ key, required }) => required && !slot.present.has(key))
  if (!client.snippets || slot.flow || slot.hasColon || required.length < 2) return []
  const label = sayIn(bundle)`required fields`
  const { character } = toRange(checked.tree, slot.span).start
  const line = checked.tree.text.slice(lineAround(checked.tree.text, slot.span.start).start)
  // an editor repeats what a line begins with, but not the dash of a list
  const indent = ' '.repeat(character - /^[ \t]*/.exec(line)![0].length)
  return [
    {
      label,
      kind: CompletionItemKind.Snippet,
      detail: required.map(({ key }) => key).join(', '),
      sortText: '~',
      filterText: label,
      insertTextFormat: InsertTextFormat.Snippet,
      textEdit: { range: toRange(checked.tree, slot.span), newText: formSnippet(required).join(`\n${indent}`) },
    },
  ]
}
