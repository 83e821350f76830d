import type { InlayHint } from 'vscode-languageserver'
import type { Measure } from '../../records/field.ts'
import { nodeAtPointer } from '../../text/tree-queries.ts'
import type { Span } from '../../text/span.ts'
import type { Tree } from '../../text/tree.ts'
import type { Value } from '../../values/value.ts'
import type { Here } from '../here.ts'
import type { EditorSettings } from '../protocol.ts'
import { toPosition } from '../to-protocol.ts'

/** In so few words as a line has room for; where several belong to one line the first of these is shown. */
const words: Readonly<Record<string, string>> = {
  efficiency: 'efficiency',
  power_per_weight: '',
  power_per_area: '',
  pmax_hot: 'hot',
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
  not_met: 'not met',
}
const byWorth = Object.keys(words)

/** What a value is, whichever array of a system it belongs to: `arrays/1/voc_cold` is a `voc_cold`. */
const wordOf = (id: string) => id.slice(id.lastIndexOf('/') + 1)

/** What a hint needs to explain itself when it is looked at. */
export interface HintData {
  readonly uri: string
  readonly value: string
}

export function inlayHints(here: Here, span: Span, { hints }: EditorSettings): InlayHint[] {
  const all = [...(hints.units ? unitHints(here) : []), ...(hints.derived ? derivedHints(here) : [])]
  return all.filter(({ at }) => span.start <= at && at <= span.end).map(({ hint }) => hint)
}

interface Placed {
  readonly at: number
  readonly hint: InlayHint
}

/** The unit of a number that was typed without one. */
function unitHints({ checked: { fields, tree } }: Here): Placed[] {
  return [...(fields as ReadonlyMap<string, Partial<Measure>>).values()].flatMap(({ quantity, span }) => {
    if (!quantity?.unitDefaulted || !span || quantity.unit === '') return []
    const position = toPosition(tree, span.end)
    return [
      {
        at: span.end,
        hint: {
          position,
          label: quantity.unit,
          paddingLeft: true,
          tooltip: `read as ${quantity.unit}, the unit of a bare number here`,
        },
      },
    ]
  })
}

/** At most one a line, behind what was typed there. */
function derivedHints({ checked, uri }: Here): Placed[] {
  const { tree } = checked
  const lines = new Map<number, Placed>()
  for (const value of checked
    .values()
    .filter(({ id }) => wordOf(id) in words)
    .sort(worth)) {
    const node = value.value === null ? null : nodeAtPointer(tree, value.at)
    if (!node) continue
    const at = lineContentEnd(tree, node.span.end)
    const position = toPosition(tree, at)
    if (lines.has(position.line)) continue
    const data: HintData = { uri, value: value.id }
    lines.set(position.line, { at, hint: { position, label: labelOf(value), paddingLeft: true, data } })
  }
  return [...lines.values()]
}

const worth = (a: Value, b: Value) => rank(a) - rank(b)
const rank = ({ id }: Value) => byWorth.indexOf(wordOf(id))

const labelOf = ({ id, text }: Value) => `${words[wordOf(id)]} ${text}`.trim()

/** Behind the last character of a line that is no comment. */
function lineContentEnd({ text, comments }: Tree, offset: number): number {
  const rest = /^[^\r\n]*/.exec(text.slice(offset))?.[0].length ?? 0
  const comment = comments.find(({ span }) => offset <= span.start && span.start <= offset + rest)
  return offset + text.slice(offset, comment?.span.start ?? offset + rest).trimEnd().length
}

/** The formula and its inputs, when a hint is looked at. */
export function explainHint(here: Here, hint: InlayHint): InlayHint {
  const { value } = hint.data as HintData
  const found = here.checked.values().find(({ id }) => id === value)
  if (!found) return hint
  const inputs = found.inputs.map((one) => `${one.name} ${one.text}`).join(', ')
  return {
    ...hint,
    tooltip: `${found.label} ${found.text} = ${found.formula}\nwith ${inputs}\nSource: ${found.source}`,
  }
}
