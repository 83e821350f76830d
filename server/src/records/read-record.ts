import { phrase, type Phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding, type Proposed } from '../findings/make.ts'
import { beyondAny } from './beyond.ts'
import { isDay } from './dates.ts'
import type { Fix, QuantityKind } from '../quantities/quantity.ts'
import { formatNumber } from '../quantities/format.ts'
import { ofPanel } from '../quantities/per-cell.ts'
import { readQuantity, type ReadOptions } from '../quantities/read.ts'
import { insertEntry, renameKey, replaceNode } from '../text/edits.ts'
import { childPointer, parentPointer } from '../text/pointer.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { MapNode, Node, ScalarNode, Tree } from '../text/tree.ts'
import { quantityFacts, reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import type { Field, Measure } from './field.ts'
import { fieldName } from './info-at.ts'
import { onceEach } from './once-each.ts'
import { scalarValue, text } from './plain.ts'
import { schemas } from './schemas.generated.ts'
import { aFieldEach, isSameLength, sidesIn, type Side } from './sides.ts'

/** What reading needs beside the tree. */
export interface ReadingContext {
  readonly tree: Tree
  /** Pointers whose value YAML has damaged: they are not computed with. */
  readonly spoiled: ReadonlySet<string>
  /** ISO 4217 code of a bare price, if the library names one. */
  readonly currency?: string | undefined
}

export interface RecordRead {
  /** Groups and lists as the generated record types say; fields that could not be read are absent. */
  readonly record: unknown
  readonly fields: ReadonlyMap<string, Field<unknown>>
  readonly findings: readonly Finding[]
  /** Where values, and names of several words, begin that could not be understood. */
  readonly unread: readonly number[]
}

/** Tree -> typed record. What cannot be read is left out and named in a finding; nothing throws. */
export function readRecord(info: FieldInfo, root: Node | null, context: ReadingContext): RecordRead {
  const fields = new Map<string, Field<unknown>>()
  const findings: Finding[] = []
  const unread: number[] = []
  const { spoiled, currency } = context
  return { record: read(info, root), fields, findings, unread }

  function read(f: FieldInfo, node: Node | null, free = none): unknown {
    switch (f.type) {
      case 'group':
        return group(f, node)
      case 'list':
        return node?.kind === 'list'
          ? node.items.map((item) => read(f.item as FieldInfo, item)).filter((x) => x !== undefined)
          : []
      case 'map':
        return node?.kind === 'map' ? map(f, node) : {}
      case 'reference':
        return reference(f, node)
      default:
        return node?.kind === 'scalar' && !spoiled.has(node.pointer) ? keep(scalar(f, node, free), node) : undefined
    }
  }

  function group(f: FieldInfo, node: Node | null) {
    const entries = new Map<string, Node | null>()
    // of a key typed twice the first counts, as for pointers
    if (node && node.kind !== 'map') unread.push(node.span.start)
    else if (node)
      for (const { key, keySpan, value } of node.entries) {
        if (!entries.has(key)) entries.set(key, value)
        if (key.includes(' ')) unread.push(keySpan.start)
      }
    const out: Record<string, unknown> = {}
    const free = () => (f.fields ?? []).filter(({ key }) => !entries.has(key))
    for (const child of f.fields ?? []) {
      const value = read(child, entries.get(child.key) ?? null, free)
      if (value !== undefined) out[child.key] = value
    }
    return out
  }

  function map(f: FieldInfo, node: MapNode) {
    const read1 = node.entries.toReversed().map((e) => [e.key, read(f.item as FieldInfo, e.value)] as const)
    return Object.fromEntries(read1.filter(([, value]) => value !== undefined))
  }

  /** An id, or the fields of that record in its place. */
  function reference(f: FieldInfo, node: Node | null) {
    if (node?.kind === 'scalar') return { id: keep(text(node)) }
    const info = f.record && schemas[f.record]
    return info && node?.kind === 'map' ? { inline: group(info, node) } : {}
  }

  function scalar(f: FieldInfo, node: ScalarNode, free: Free): Field<unknown> | undefined {
    const value = scalarValue(node)
    switch (f.type) {
      case 'quantity':
        return quantity(f, node, free)
      case 'choice':
        return f.choices?.some((c) => c.value === node.text) ? text(node) : undefined
      case 'integer':
      case 'number':
        return typeof value === 'number' ? number(f, node, value) : undefined
      case 'boolean':
        return typeof value === 'boolean' ? { ...text(node), value } : undefined
      case 'date':
        return date(f, node)
      default:
        return text(node)
    }
  }

  /** A text or a part of a number is reported by the schema. */
  function number(f: FieldInfo, node: ScalarNode, value: number): Field | undefined {
    const beyond = beyondAny(f, node, value)
    if (beyond) findings.push(beyond)
    return !beyond && (f.type === 'number' || Number.isInteger(value)) ? { ...text(node), value } : undefined
  }

  /** A date that is not written as one is reported by the schema. */
  function date(f: FieldInfo, node: ScalarNode): Field<string> | undefined {
    if (isDay(node.text)) return text(node)
    const message = phrase`${fieldName(f)} ${node.text} is not a day of the calendar.`
    if (written.test(node.text)) findings.push(finding(reading.wrongText, node, message))
    return undefined
  }

  /** @param free  fields of the same group that are not typed */
  function quantity(f: FieldInfo, node: ScalarNode, free: Free): Measure | undefined {
    const options = currency && f.quantity === 'money' ? { ...optionsOf(f), currency } : optionsOf(f)
    const rate =
      f.quantity === 'current' ? chargeRate(node) : f.quantity === 'voltage-coefficient' ? perCell(node) : undefined
    if (rate) return rate
    const read = readQuantity(node.text, f.quantity!, options)
    for (const note of read.problem ? [read.problem] : read.notes) {
      const at = startOf(node)
      const span = at === null ? node.span : { start: at + note.start, end: at + note.end }
      const sides = note.code === 'two-numbers' && f.key === 'length' ? (sidesIn(node.text) ?? []) : []
      const corrections = [
        ...(note.code === 'wrong-dimension' ? renamed(node, free()) : []),
        ...(sides.length > 0 ? apart(sides, node, free()) : note.fixes.map((fix) => fixed(fix, node))),
      ]
      const message = sides.length > 0 ? aFieldEach(sides) : phrase`${note.message}.`
      findings.push(finding(quantityFacts[note.code], { pointer: node.pointer, span }, message, { corrections }))
    }
    return read.quantity && { ...text(node), value: read.quantity.value, quantity: read.quantity }
  }

  /** Where the text begins, behind a quote or not; null where escapes or folded lines make it differ from what was typed. */
  function startOf({ text, span: { start } }: ScalarNode): number | null {
    return [start, start + 1].find((at) => context.tree.text.startsWith(text, at)) ?? null
  }

  function fixed(fix: Fix, node: ScalarNode) {
    return { ...fix, pointer: node.pointer, edits: [replaceNode(context.tree, node, fix.text)] }
  }

  /** The one field beside it that takes what was typed: a load's current under `power`. */
  function renamed(node: ScalarNode, free: readonly FieldInfo[]): Proposed[] {
    const beside = nodeAtPointer(context.tree, parentPointer(node.pointer))
    // where another field has such a value, the name is not what is wrong
    const isTyped = (kind: QuantityKind) =>
      beside?.kind === 'map' &&
      beside.entries.some(
        ({ value }) => value?.kind === 'scalar' && value.span !== node.span && readQuantity(value.text, kind).quantity,
      )
    const takes = free.filter(({ quantity: kind }) => kind && !isTyped(kind) && readQuantity(node.text, kind).quantity)
    const [only] = takes.length === 1 ? takes : []
    if (!only) return []
    const edits = [renameKey(context.tree, node.pointer, only.key)]
    return [{ pointer: node.pointer, text: only.key, why: phrase`the field that takes it`, certainty: 'guess', edits }]
  }

  /** `length: 1190 x 735 x 2.5 mm` where the other sides are not typed, or are typed as the same. */
  function apart([first, ...others]: readonly Side[], node: ScalarNode, free: readonly FieldInfo[]): Proposed[] {
    const parent = parentPointer(node.pointer)
    const missing = others.filter(({ key }) => free.some((field) => field.key === key))
    const isTyped = ({ key, text }: Side) => {
      const typed = nodeAtPointer(context.tree, childPointer(parent, key))
      return typed?.kind === 'scalar' && isSameLength(typed.text, text)
    }
    if (!first || !others.every((side) => missing.includes(side) || isTyped(side))) return []
    const edits = [
      replaceNode(context.tree, node, first.text),
      ...missing.map(({ key, text }) => insertEntry(context.tree, parent, key, text, 'length')),
    ]
    const also = missing.map(({ key, text }) => ({ pointer: childPointer(parent, key), text }))
    const why = phrase`a field each`
    return [
      { pointer: node.pointer, text: first.text, why, certainty: 'guess', edits, ...(also.length > 0 && { also }) },
    ]
  }

  /** `1C`, `C/5`, `0.2 C10`: a multiple of the capacity of the battery around it. */
  function chargeRate(node: ScalarNode): Measure | undefined {
    const [, times, part] = /^(?:(\d+(?:\.\d+)?|\.\d+) ?C(?:\d+)?|C ?\/ ?(\d+))$/.exec(node.text) ?? []
    const rate = part ? 1 / Number(part) : Number(times)
    const battery = parentPointer(parentPointer(node.pointer))
    const amount = nodeAtPointer(context.tree, `${battery}/capacity/amount`)
    if (!(rate > 0) || amount?.kind !== 'scalar') return undefined
    const capacity = readQuantity(amount.text, 'charge').quantity
    if (!capacity) return undefined
    const fixed = `${formatNumber(rate * capacity.value, 4)} A`
    const { quantity } = readQuantity(fixed, 'current')
    const sentence = phrase`${node.text} is ${fixed}: ${formatNumber(rate, 3)} times the capacity ${amount.text}.`
    return meant(node, quantity, sentence, { ...inOtherWords(node, fixed), why: phrase`as a current` })
  }

  /** `-2.1 mV/K per cell`: that of the panel is as many times larger as it has cells in series. */
  function perCell(node: ScalarNode): Measure | undefined {
    const cells = nodeAtPointer(context.tree, '/cells/in_series')
    const count = cells?.kind === 'scalar' ? scalarValue(cells) : null
    const fixed = ofPanel(node.text, count)
    if (fixed === null) return undefined
    const { quantity } = readQuantity(fixed, 'voltage-coefficient')
    const sentence = phrase`${node.text} is ${fixed} for the panel: ${String(count)} cells in series.`
    return meant(node, quantity, sentence, { ...inOtherWords(node, fixed), why: phrase`of the whole panel` })
  }

  function inOtherWords(node: ScalarNode, text: string) {
    return {
      pointer: node.pointer,
      text,
      certainty: 'same' as const,
      edits: [replaceNode(context.tree, node, text)],
    }
  }

  /** What was typed in other terms, with the text that says it in those of the field. */
  function meant(node: ScalarNode, quantity: Measure['quantity'] | undefined, sentence: Phrase, correction: Proposed) {
    findings.push(finding(reading.otherWord, node, sentence, { corrections: [correction] }))
    return quantity && { ...text(node), value: quantity.value, quantity }
  }

  function keep<T extends Field<unknown>>(field: T | undefined, node?: ScalarNode): T | undefined {
    if (field) fields.set(field.pointer, field)
    else if (node) unread.push(node.span.start)
    return field
  }
}

const optionsOf = onceEach((f: FieldInfo): ReadOptions => (f.unit ? { unit: f.unit } : {}))

/** The fields of a group that are not typed; few readers ask. */
type Free = () => readonly FieldInfo[]
const none: Free = () => []

const written = /^\d{4}-\d{2}-\d{2}$/
