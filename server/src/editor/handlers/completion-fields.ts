import type { CompletionItem } from 'vscode-languageserver'
import { CompletionItemKind, InsertTextFormat } from '../lsp.ts'
import { allFacts } from '../../check/facts.ts'
import type { FieldInfo } from '../../records/field-info.ts'
import { translated } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import type { Slot } from '../slot.ts'
import { toRange } from '../to-protocol.ts'

/** Fields that are not there yet, required ones first, each with the cursor where its value begins. */
export function fieldItems(here: Here, slot: Slot): CompletionItem[] {
  const fields = slot.info.type === 'map' ? rulesAsFields(slot.info) : (slot.info.fields ?? [])
  return fields
    .map((field, index) => ({ field, rank: (field.required ? 0 : 500) + index }))
    .filter(({ field }) => !slot.present.has(field.key))
    .map(({ field, rank }) => fieldItem(here, slot, field, rank))
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
      ? `: ${valueSnippet(field, slot.json)}`.trimEnd()
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

  function valueSnippet(field: FieldInfo, json: boolean): string {
    switch (field.type) {
      case 'group':
      case 'map':
        return json || slot.flow ? '{ $1 }' : ''
      case 'list':
        return field.item?.type === 'group' ? '[{ $1 }]' : '[$1]'
      case 'choice':
        return quoted(`\${1|${(field.choices ?? []).map(({ value }) => forChoice(value)).join(',')}|}`)
      case 'quantity':
        return quoted(`$1${unitOf(field)}`)
      case 'integer':
      case 'number':
      case 'boolean':
        return field.key === 'format' ? '1' : '$1'
      default:
        return quoted('$1')
    }
  }

  function quoted(text: string): string {
    return slot.json ? `"${text}"` : text
  }
}

const isGroup = ({ type }: FieldInfo) => type === 'group' || type === 'map'

/** The unit that a datasheet would print, behind the place of the number: a number that nobody read is never put in. */
function unitOf({ examples, unit }: FieldInfo): string {
  const [, printed] = /\d\s+([^\d\s]\S*)$/.exec(examples?.[0] ?? '') ?? []
  const text = printed ?? unit
  return text ? ` ${text.replace(/[\\$}]/g, '\\$&')}` : ''
}

const forChoice = (text: string) => text.replace(/[\\$},|]/g, '\\$&')
