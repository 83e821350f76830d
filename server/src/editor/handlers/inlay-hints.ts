import type { InlayHint } from 'vscode-languageserver'
import type { Measure } from '../../records/field.ts'
import { formatIn } from '../../quantities/format.ts'
import { keySpanOrValue, nodeAtPointer } from '../../text/tree-queries.ts'
import type { Span } from '../../text/span.ts'
import type { Tree } from '../../text/tree.ts'
import { valueText } from '../../values/value-text.ts'
import type { Value } from '../../values/value.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import type { EditorSettings } from '../protocol.ts'
import { measuredHints } from './measured-hints.ts'
import { soundValues } from '../sound-values.ts'
import { toPosition } from '../to-protocol.ts'

/** In so few words as a line has room for; where several belong to one line the first of these are shown. */
const words: Readonly<Record<string, string>> = {
  efficiency: '',
  pmax_hot: 'hot',
  power_per_weight: '',
  power_per_area: '',
  price_per_watt: '',
  voc_cold: 'cold',
  isc_design: 'design',
  fill_factor: 'fill factor',
  cell_temperature_hot: 'hot cell',
  voc_per_cell: 'per cell',
  area: 'area',
  vmp_hot: 'hot',
  cable_drop: 'drop',
  usable: 'usable',
  autonomy: 'lasts',
  yield: 'a day',
  unmet_load: 'unmet',
}
const ranks = Object.keys(words)

/** Characters of a hint; editors cut what is much longer. */
const room = 20

/** What a value is, whichever array of a system it belongs to: `arrays/1/voc_cold` is a `voc_cold`. */
const wordOf = (id: string) => id.slice(id.lastIndexOf('/') + 1)

/** What a hint needs to explain itself when it is looked at. */
export interface HintData {
  readonly uri: string
  readonly values: readonly string[]
}

export function inlayHints(here: Here, span: Span, { hints }: EditorSettings): InlayHint[] {
  const all = [
    ...(hints.units ? unitHints(here) : []),
    ...(hints.derived ? [...derivedHints(here), ...measuredHints(here)] : []),
  ]
  return all.filter(({ at }) => span.start <= at && at <= span.end).map(({ hint }) => hint)
}

interface Placed {
  readonly at: number
  readonly hint: InlayHint
}

/** Fields whose name is their unit. */
const unitByName = /\/(?:hours|days|years)$/

/** The unit of a number that was typed without one; of a list, once. */
function unitHints({ checked: { fields, tree }, bundle }: Here): Placed[] {
  const bare = [...(fields as ReadonlyMap<string, Partial<Measure>>)].flatMap(([pointer, { quantity, span }]) =>
    quantity?.unitDefaulted && span && quantity.unit !== '' ? [{ pointer, unit: shownUnit(quantity), span }] : [],
  )
  const items = new Set(bare.map(({ pointer }) => pointer))
  return bare.flatMap(({ pointer, unit, span }) => {
    if (unitByName.test(pointer) || items.has(nextItem(pointer) ?? '')) return []
    const position = toPosition(tree, span.end)
    const tooltip = unit.startsWith('=')
      ? sayIn(bundle)`read as a fraction`
      : sayIn(bundle)`read as ${unit}, the unit of a bare number here`
    return [{ at: span.end, hint: { position, label: spaced(unit), tooltip } }]
  })
}

/** A fraction has no unit; it shows what it is in percent. */
const shownUnit = ({ unit, value }: Measure['quantity']) => (unit === '1' ? `= ${formatIn(value, unit)}` : unit)

/** The pointer of the item behind; null where it is no item of a list. */
function nextItem(pointer: string): string | null {
  const [, list, index] = /^(.*\/)(\d+)$/.exec(pointer) ?? []
  return list === undefined ? null : `${list}${Number(index) + 1}`
}

/** Editors draw their own padding a hair wide. */
const spaced = (label: string) => ` ${label}`

/** At most one a line, behind what was typed there; a value that only repeats that is left out. */
function derivedHints({ checked, uri, bundle }: Here): Placed[] {
  const { tree } = checked
  const lines = new Map<number, { at: number; values: Value[] }>()
  for (const value of soundValues(checked)
    .filter(({ id }) => wordOf(id) in words)
    .sort(byWorth)) {
    const node = value.value === null ? null : nodeAtPointer(tree, value.pointer)
    if (!node || (node.kind === 'scalar' && node.text === value.text)) continue
    const isBelow = node.kind !== 'scalar' && !node.flow
    const at = lineContentEnd(tree, isBelow ? keySpanOrValue(tree, value.pointer).end : node.span.end)
    const { line } = toPosition(tree, at)
    lines.set(line, { at, values: [...(lines.get(line)?.values ?? []), value] })
  }
  return [...lines.values()].map(({ at, values }) => {
    const shown = together(bundle, values)
    const data: HintData = { uri, values: shown.map(({ id }) => id) }
    return { at, hint: { position: toPosition(tree, at), label: spaced(labelOf(bundle, shown)), data } }
  })
}

/** Those that matter most first; those that no line shows last. */
export const byWorth = (a: Value, b: Value): number => rank(a) - rank(b)
const rank = ({ id }: Value) => (ranks.includes(wordOf(id)) ? ranks.indexOf(wordOf(id)) : ranks.length)

/** The first two where a line has room for both, else the first. */
function together(bundle: Bundle | undefined, values: readonly Value[]): readonly Value[] {
  const two = values.slice(0, 2)
  return labelOf(bundle, two).length <= room ? two : two.slice(0, 1)
}

function labelOf(bundle: Bundle | undefined, values: readonly Value[]): string {
  const say = sayIn(bundle)
  const [first, second] = values
  if (first && wordOf(first.id) === 'unmet_load' && first.value === 0) return say`all met`
  if (first?.id === 'efficiency' && !second) return say`efficiency ${valueText(first, bundle)}`
  return values
    .map((value) => `${translated(words[wordOf(value.id)]!, bundle)} ${valueText(value, bundle)}`.trim())
    .join(', ')
}

/** Behind the last character of a line that is no comment. */
function lineContentEnd({ text, comments }: Tree, offset: number): number {
  const rest = /^[^\r\n]*/.exec(text.slice(offset))?.[0].length ?? 0
  const comment = comments.find(({ span }) => offset <= span.start && span.start <= offset + rest)
  return offset + text.slice(offset, comment?.span.start ?? offset + rest).trimEnd().length
}

/** The formula and its inputs, when a hint is looked at. */
export function explainHint(here: Here, hint: InlayHint): InlayHint {
  const { values } = hint.data as HintData
  const found = here.checked.values().filter(({ id }) => values.includes(id))
  return found.length > 0 ? { ...hint, tooltip: found.map((one) => explained(here.bundle, one)).join('\n\n') } : hint
}

function explained(bundle: Bundle | undefined, value: Value): string {
  const { label, formula, inputs, source } = value
  const from = inputs.map((one) => `${translated(one.name, bundle)} ${one.text}`).join(', ')
  const say = sayIn(bundle)
  return `${translated(label, bundle)} ${valueText(value, bundle)} = ${translated(formula, bundle)}\n${say`with ${from}`}\n${say`Source: ${source}`}`
}
