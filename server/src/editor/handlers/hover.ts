import type { Hover } from 'vscode-languageserver'
import type { Finding } from '../../findings/finding.ts'
import type { Measure } from '../../records/field.ts'
import type { RecordKind } from '../../records/field-info.ts'
import type { ReadFile } from '../../records/read-file.ts'
import { hold } from '../../sheets/hold.ts'
import { translated } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { isWithin, spotAt, type Spot } from '../spot.ts'
import { summaryOf, titleOf } from '../summary.ts'
import { escaped, toMarkup, toRange } from '../to-protocol.ts'
import { besideIt } from './conversions.ts'
import { explainedIn, inShort, valuesAt } from './hover-values.ts'

/**
 * What a field is, what it says in another unit, what is doubtful about it and what follows from it: in five lines at most, and
 * below "More" the formulas, their inputs and sources, and what the words of a choice mean.
 */
export function hover(here: Here, offset: number): Hover | null {
  const { checked, client, bundle } = here
  const say = sayIn(bundle)
  const spot = spotAt(checked, offset)
  const findings = checked.findings.filter(({ span }) => isWithin(span, offset))
  const values = spot ? valuesAt(here, spot.pointer) : []
  const first = [
    ...(spot ? heading(here, spot) : []),
    ...findings.slice(0, 1).map(doubt),
    ...(spot ? [...printed(here, spot.pointer), ...meaning(here, spot), ...inShort(here, values)] : []),
  ]
  if (first.length === 0) return null
  const more = [
    ...findings.slice(1).map(doubt),
    ...findings.map(({ rule, source }) => say`**${escaped(rule)}** Source: ${escaped(source)}.`),
    ...(spot ? choices(here, spot) : []),
    ...explainedIn(here, values, spot?.pointer),
  ]
  const markdown = [first.join('  \n'), ...(more.length > 0 ? [say`**More**`, ...more] : [])].join('\n\n')
  const span = spot?.span ?? findings[0]!.span
  return { contents: toMarkup(client, markdown), range: toRange(checked.tree, span) }
}

/** Its names, and the value as typed and in another unit, or the record that an id names. */
function heading(here: Here, spot: Spot): string[] {
  const value = reading(here, spot)
  if (!spot.info) return value ? [value] : []
  const title = translated(spot.info.title, here.bundle)
  const symbol = spot.info.symbol && translated(spot.info.symbol, here.bundle)
  const name = symbol && symbol !== title ? `**${escaped(symbol)}**, ${escaped(title)}` : `**${escaped(title)}**`
  return [value ? `${name}: ${value}` : name]
}

function reading(here: Here, { node, pointer }: Spot): string | null {
  if (node?.kind !== 'scalar') return null
  const named = here.library.references(here.checked).find(({ field }) => field.pointer === pointer)
  if (named) {
    const known = here.library.byId<RecordKind>(named.kind, named.field.value, here.path)
    const records = known.flatMap(({ path }) => here.check(path) ?? [])
    return records.map((one) => `${escaped(titleOf(one))}: ${escaped(summaryOf(one))}`).join('; ') || null
  }
  const measure = here.checked.fields.get(pointer) as Measure | undefined
  const quantity = measure?.quantity
  if (!quantity) return null
  const typed = quantity.unitDefaulted && quantity.unit !== '1' ? `${node.text} ${quantity.unit}` : node.text
  return [typed, ...besideIt(here.checked, measure)].map(escaped).join(' = ')
}

/** What the datasheet prints for the field, and where. */
function printed({ checked, beside, bundle }: Here, pointer: string): string[] {
  if (beside?.state !== 'read' || checked.kind !== 'panel') return []
  const witness = hold(checked as ReadFile<'panel'>, beside.sheet).fields.find(({ field }) => field.pointer === pointer)
  if (!witness?.reading) return []
  const { page, label, text } = witness.reading
  return [
    sayIn(bundle)`${escaped(beside.source)}, page ${page}: ${escaped(label === text ? text : `${label} ${text}`)}`,
  ]
}

/** What the field is; of a choice, what the typed word means. */
function meaning({ bundle }: Here, { info, node }: Spot): string[] {
  if (!info) return []
  const typed = node?.kind === 'scalar' ? info.choices?.find(({ value }) => value === node.text) : undefined
  return [
    typed
      ? `${escaped(typed.value)}: ${escaped(translated(typed.description, bundle))}`
      : escaped(translated(info.description, bundle)),
  ]
}

const choices = ({ bundle }: Here, { info }: Spot): string[] =>
  info?.choices
    ? [
        info.choices
          .map(({ value, description }) => `- ${escaped(value)}: ${escaped(translated(description, bundle))}`)
          .join('\n'),
      ]
    : []

/** Editors show the message of a finding beside the hover; here is why it is one. */
const doubt = ({ reason, rule }: Finding) => `**${escaped(rule)}**: ${escaped(reason)}`
