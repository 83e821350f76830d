import type { CompletionItem, TextEdit } from 'vscode-languageserver'
import { CompletionItemKind, CompletionTriggerKind } from '../lsp.ts'
import { allFacts } from '../../check/facts.ts'
import { unitsFor } from '../../quantities/kinds.ts'
import type { RecordKind } from '../../records/field-info.ts'
import type { Span } from '../../text/span.ts'
import { spelledScalar } from '../../text/spelling.ts'
import { translated } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { slotAt, type Slot } from '../slot.ts'
import { summaryOf } from '../summary.ts'
import { toOffset, toRange } from '../to-protocol.ts'
import { acceptItems } from './completion-accept.ts'
import { fieldItems } from './completion-fields.ts'

/**
 * What an editor shows. A list of values goes away once one of them is typed: Enter would be taken for a choice, and glue
 * the next line to this one. Units are typed sooner than chosen, so a blank alone does not bring them up.
 */
export function completionFor(here: Here, offset: number, trigger: CompletionTriggerKind) {
  const slot = slotAt(here.checked, offset)
  if (slot?.kind !== 'value') return completion(here, offset)
  const isAsked = trigger === CompletionTriggerKind.Invoked
  const isUnit = slot.info.type === 'quantity'
  const items = isUnit && trigger === CompletionTriggerKind.TriggerCharacter ? [] : valueItems(here, slot)
  const typed = items.find(({ textEdit }) => (isUnit || !isAsked ? isThere(here, slot, textEdit) : false))
  // asked anew with every digit, as the number is part of each proposal; not with the letters of a unit, or Enter comes before the answer
  return { isIncomplete: isUnit && !unitBegun.test(slot.typed), items: typed ? [hidden(typed)] : items }
}

const unitBegun = /[^\d\s.,+-]$/

/** Whether a proposal would change nothing before the cursor. */
function isThere({ checked }: Here, { span, typed }: Slot, textEdit: CompletionItem['textEdit']): boolean {
  const { range, newText } = textEdit as TextEdit
  const before = checked.tree.text.slice(toOffset(checked.tree, range.start), span.start + typed.length)
  return newText.trim().replace(/["']$/, '') === before.trim()
}

/** Matches nothing that is typed, and keeps an editor from proposing words of its own in its place. */
const hidden = (item: CompletionItem): CompletionItem => ({ ...item, filterText: '\u200B' })

/**
 * What a proposal is matched with: it lacks the last letter, so an editor drops the proposal when that is typed, without
 * waiting for an answer, and Enter ends the line.
 */
const unfinished = (text: string) => text.replace(/.["']?$/u, '') || '\u200B'

/** What may be typed here: fields in the order of a datasheet, words, units, ids, rules. */
export function completion(here: Here, offset: number): CompletionItem[] {
  const slot = slotAt(here.checked, offset)
  if (!slot) return acceptItems(here, offset)
  return slot.kind === 'key' ? fieldItems(here, slot) : valueItems(here, slot)
}

function valueItems(here: Here, slot: Slot): CompletionItem[] {
  const { info } = slot
  switch (info.type) {
    case 'choice':
      return words(
        here,
        slot,
        (info.choices ?? []).map(({ value, description }) => ({
          label: value,
          documentation: translated(description, here.bundle),
        })),
      )
    case 'boolean':
      return words(here, slot, [{ label: 'true' }, { label: 'false' }])
    case 'date':
      return words(here, slot, [{ label: here.today, detail: sayIn(here.bundle)`today` }])
    case 'quantity':
      return unitItems(here, slot)
    case 'reference':
      return words(here, slot, info.record ? idsOf(here, info.record) : [])
    case 'text':
      return words(here, slot, knownTexts(here, slot))
    default:
      return []
  }
}

function idsOf(here: Here, kind: RecordKind): Word[] {
  return here.library
    .ofKind(kind, here.path)
    .flatMap(({ path }) => here.check(path) ?? [])
    .map((record) => ({ label: record.id, detail: summaryOf(record), kind: CompletionItemKind.Reference }))
}

/** Rules and fields of an acceptance; surfaces of the system, climates for its library; usual words where a list collects them. */
function knownTexts(here: Here, { pointer, info }: Slot): Word[] {
  const { checked } = here
  if (checked.kind === 'system' && /^\/arrays\/\d+\/panels\/\d+\/surface$/.test(pointer))
    return [...checked.fields]
      .filter(([at]) => /^\/surfaces\/\d+\/id$/.test(at))
      .map(([, { text }]) => ({ label: text }))
  if (checked.kind === 'system' && /^\/measurements\/\d+\/array$/.test(pointer))
    return [...checked.fields].filter(([at]) => /^\/arrays\/\d+\/id$/.test(at)).map(([, { text }]) => ({ label: text }))
  if (checked.kind === 'library' && pointer === '/site/climate') return idsOf(here, 'climate')
  if (/^\/accepted\/\d+\/rule$/.test(pointer))
    return allFacts.flatMap(({ rules }) =>
      rules.map(({ id, reason }) => ({ label: id, documentation: translated(reason, here.bundle) })),
    )
  if (/^\/accepted\/\d+\/field$/.test(pointer))
    return [...new Set(checked.findings.map((one) => one.pointer))].map((label) => ({ label }))
  return /\/\d+$|^\/loads\/\d+\/at$/.test(pointer) ? (info.examples ?? []).map((label) => ({ label })) : []
}

type Word = Pick<CompletionItem, 'label' | 'detail' | 'documentation' | 'kind'>

function words(here: Here, slot: Slot, all: readonly Word[]): CompletionItem[] {
  return all.map((word, index) => {
    const text =
      slot.json && word.label !== 'true' && word.label !== 'false'
        ? JSON.stringify(word.label)
        : spelledScalar(word.label, 'plain', slot.flow)
    return {
      kind: CompletionItemKind.EnumMember,
      ...word,
      sortText: order(index),
      filterText: unfinished(text),
      textEdit: replacement(here, slot.span, `${slot.needsBlank ? ' ' : ''}${text}`),
    }
  })
}

/** Once there is a number, its unit. */
function unitItems(here: Here, slot: Slot): CompletionItem[] {
  const { info, span } = slot
  const number = /^.*\d/.exec(slot.typed)?.[0]
  if (!info.quantity || number === undefined || slot.needsBlank) return []
  const gap = /^[ \t]*/.exec(slot.typed.slice(number.length))![0]
  const quote = /^["']/.exec(slot.typed)?.[0] ?? ''
  const range = { start: span.start + number.length, end: span.end }
  const currency = here.library.settings(here.path)?.record.currency?.value
  const units = [...new Set([...(info.quantity === 'money' && currency ? [currency] : []), ...unitsFor(info.quantity)])]
  return units.map((unit, index) => ({
    label: unit,
    kind: CompletionItemKind.Unit,
    sortText: order(index),
    filterText: unfinished(`${gap}${unit}`),
    textEdit: replacement(here, range, ` ${unit}${quote}`),
  }))
}

export const replacement = ({ checked }: Here, span: Span, newText: string) => ({
  range: toRange(checked.tree, span),
  newText,
})

export const order = (index: number) => String(index).padStart(3, '0')
