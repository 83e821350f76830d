import type { Hover } from 'vscode-languageserver'
import type { Finding } from '../../findings/finding.ts'
import { alternatives } from '../../quantities/format.ts'
import type { Measure } from '../../records/field.ts'
import type { FieldInfo, RecordKind } from '../../records/field-info.ts'
import type { ReadFile } from '../../records/read-file.ts'
import { hold } from '../../sheets/hold.ts'
import { energyOfMonths } from '../../values/energy.ts'
import type { Value } from '../../values/value.ts'
import type { Here } from '../here.ts'
import { isWithin, spotAt, type Spot } from '../spot.ts'
import { summaryOf, titleOf } from '../summary.ts'
import { escaped, toMarkup, toRange } from '../to-protocol.ts'

/** What a field is, what it says in other units, what follows from it, and what is doubtful about it. */
export function hover(here: Here, offset: number): Hover | null {
  const { checked, client } = here
  const spot = spotAt(checked, offset)
  const findings = checked.findings.filter(({ span }) => isWithin(span, offset))
  const parts = [
    ...(spot
      ? [
          ...heading(spot),
          ...reading(here, spot),
          ...printed(here, spot.pointer),
          ...meaning(spot.info),
          ...derived(here, spot.pointer),
        ]
      : []),
    ...findings.map(doubt),
  ]
  if (parts.length === 0) return null
  const span = spot?.span ?? findings[0]!.span
  return { contents: toMarkup(client, parts.join('\n\n')), range: toRange(checked.tree, span) }
}

function heading({ info }: Spot): string[] {
  if (!info) return []
  const { symbol, title } = info
  return [symbol && symbol !== title ? `**${escaped(symbol)}**, ${escaped(title)}` : `**${escaped(title)}**`]
}

/** The value as printed and in other units, or the record that an id names. */
function reading(here: Here, { node, pointer }: Spot): string[] {
  if (node?.kind !== 'scalar') return []
  const named = here.library.references(here.checked).find(({ field }) => field.pointer === pointer)
  if (named) {
    const known = here.library.byId<RecordKind>(named.kind, named.field.value, here.path)
    return known
      .flatMap(({ path }) => here.check(path) ?? [])
      .map((one) => `${escaped(titleOf(one))}: ${escaped(summaryOf(one))}`)
  }
  const { quantity } = (here.checked.fields.get(pointer) ?? {}) as Partial<Measure>
  if (!quantity) return []
  const typed = quantity.unitDefaulted && quantity.unit !== '1' ? `${node.text} ${quantity.unit}` : node.text
  return [[typed, ...alternatives(quantity).map(({ text }) => text)].map(escaped).join(' = ')]
}

/** What the datasheet prints for the field, and where. */
function printed({ checked, beside }: Here, pointer: string): string[] {
  if (beside?.state !== 'read' || checked.kind !== 'panel') return []
  const witness = hold(checked as ReadFile<'panel'>, beside.sheet).fields.find(({ field }) => field.pointer === pointer)
  if (!witness?.reading) return []
  const { page, label, text } = witness.reading
  return [`${escaped(beside.source)}, page ${page}: ${escaped(label === text ? text : `${label} ${text}`)}`]
}

function meaning(info: FieldInfo | null): string[] {
  if (!info) return []
  const choices = (info.choices ?? []).map(({ value, description }) => `- ${escaped(value)}: ${escaped(description)}`)
  return [escaped(info.description), ...(choices.length > 0 ? [choices.join('\n')] : [])]
}

/** Values that the field has a part in; those that cannot be known yet share one line, and so do the months. */
function derived({ checked }: Here, pointer: string): string[] {
  const all = checked
    .values()
    .filter(({ inputs, at }) => at === pointer || inputs.some((one) => one.pointer === pointer))
  const known = all.filter(({ value }) => value !== null)
  const unknown = all.filter(({ value }) => value === null)
  const lacking = unknown.map(({ label, missing }) => `- ${escaped(`${label}: ${missing.join(', ')} missing`)}`)
  return [
    ...known.filter(({ id }) => !ofMonths.has(id)).map((value) => explained(value, value.at === pointer)),
    ...byMonth(known.filter(({ id }) => ofMonths.has(id))),
    ...(lacking.length > 0 ? [`Not known yet:\n\n${lacking.join('\n')}`] : []),
  ]
}

const ofMonths = new Set(energyOfMonths.map(({ id }) => id))

function byMonth(months: readonly Value[]): string[] {
  if (months.length === 0) return []
  return [`**energy of a day from January to December** ${months.map(({ text }) => text).join(', ')}`]
}

/** Where the value belongs its source is shown as well; elsewhere the formula has to do. */
function explained({ label, text, formula, inputs, source, uncertainty }: Value, atHome: boolean): string {
  const from = inputs.map((one) => `${one.name} ${one.text}`).join(', ')
  const off = uncertainty === null ? '' : ` Uncertainty: ${uncertainty}.`
  const why = atHome ? `. Source: ${source}.${off}` : ''
  return `**${escaped(`${label} ${text}`)}** = ${escaped(formula)}  \n${escaped(`with ${from}${why}`)}`
}

/** Editors show the message of a finding beside the hover; here is why it is one. */
const doubt = ({ reason, source, rule }: Finding) =>
  `**${escaped(rule)}**: ${escaped(reason)} Source: ${escaped(source)}.`
