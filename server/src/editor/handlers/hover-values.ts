import { monthNames } from '../../findings/months.ts'
import { energyOfMonths } from '../../values/energy.ts'
import { valueText } from '../../values/value-text.ts'
import type { Value } from '../../values/value.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inARow, named, sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'
import { soundValues } from '../sound-values.ts'
import { escaped } from '../to-protocol.ts'
import { byWorth } from './inlay-hints.ts'

/** Values that the field has a part in: those of its own line first, then those that matter most. */
export const valuesAt = ({ checked }: Here, pointer: string): readonly Value[] =>
  soundValues(checked)
    .filter((value) => [value, ...value.inputs].some((one) => one.pointer === pointer))
    .sort((a, b) => Number(b.pointer === pointer) - Number(a.pointer === pointer) || byWorth(a, b))

/** The first three in one line, without how they come about. */
export function inShort({ bundle }: Here, values: readonly Value[]): string[] {
  const known = values.filter(({ id, value }) => value !== null && !ofMonths.has(id)).slice(0, 3)
  return known.length > 0
    ? [
        known
          .map((value) => `${escaped(translated(value.label, bundle))} **${escaped(valueText(value, bundle))}**`)
          .join(', '),
      ]
    : []
}

/** Each with formula and inputs; those that cannot be known yet share one line, and so do the months. */
export function explainedIn({ bundle }: Here, values: readonly Value[], pointer: string | undefined): string[] {
  const say = sayIn(bundle)
  const known = values.filter(({ value }) => value !== null)
  const lacking = values
    .filter(({ value }) => value === null)
    .map(({ label, missing }) => `- ${escaped(say`${named(label)}: ${inARow(missing.map(named), ', ')} missing`)}`)
  return [
    ...known.filter(({ id }) => !ofMonths.has(id)).map((value) => explained(bundle, value, value.pointer === pointer)),
    ...byMonth(
      bundle,
      known.filter(({ id }) => ofMonths.has(id)),
    ),
    ...(lacking.length > 0 ? [`${say`Not known yet:`}\n\n${lacking.join('\n')}`] : []),
  ]
}

const ofMonths = new Set(energyOfMonths.map(({ id }) => id))

const byMonth = (bundle: Bundle | undefined, months: readonly Value[]): string[] =>
  months.length === 0
    ? []
    : [
        sayIn(
          bundle,
        )`**energy of a day** ${months.map(({ text }, m) => `${translated(monthNames[m]!, bundle)} ${text}`).join(', ')}`,
      ]

/** Where the value belongs its source is shown as well; elsewhere the formula has to do. */
function explained(bundle: Bundle | undefined, value: Value, atHome: boolean): string {
  const { label, formula, inputs, source, uncertainty } = value
  const say = sayIn(bundle)
  const from = inputs
    .map(
      (input) =>
        `${input.name === 'X' ? say`X (what the mounting adds to NOCT)` : translated(input.name, bundle)} ${input.text}`,
    )
    .join(', ')
  const off = uncertainty === null ? '' : say` Uncertainty: ${translated(uncertainty, bundle)}.`
  const why = atHome ? say`. Source: ${sourceIn(bundle, source)}.${off}` : ''
  const k = /\bk\b/.test(formula) ? `. ${say`k is by how much each W/m2 of sun warms the cells above the air`}` : ''
  return `**${escaped(`${translated(label, bundle)} ${valueText(value, bundle)}`)}** = ${escaped(translated(formula, bundle))}  \n${escaped(say`with ${from}${k}${why}`)}`
}

/** Names of publications stay as they are; what is said around them does not. */
const sourceIn = (bundle: Bundle | undefined, source: string): string =>
  source
    .split(/; (?!from memory)/)
    .map((part) => translated(part, bundle))
    .join('; ')
