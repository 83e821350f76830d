import { monthNames } from '../../findings/months.ts'
import { energyOfMonths } from '../../values/energy.ts'
import type { Value } from '../../values/value.ts'
import type { Here } from '../here.ts'
import { soundValues } from '../sound-values.ts'
import { escaped } from '../to-protocol.ts'
import { byWorth } from './inlay-hints.ts'

/** Values that the field has a part in: those of its own line first, then those that matter most. */
export const valuesAt = ({ checked }: Here, pointer: string): readonly Value[] =>
  soundValues(checked)
    .filter(({ inputs, at }) => at === pointer || inputs.some((one) => one.pointer === pointer))
    .sort((a, b) => Number(b.at === pointer) - Number(a.at === pointer) || byWorth(a, b))

/** The first three in one line, without how they come about. */
export function inShort(values: readonly Value[]): string[] {
  const known = values.filter(({ id, value }) => value !== null && !ofMonths.has(id)).slice(0, 3)
  return known.length > 0 ? [known.map(({ label, text }) => `${escaped(label)} **${escaped(text)}**`).join(', ')] : []
}

/** Each with formula and inputs; those that cannot be known yet share one line, and so do the months. */
export function explainedIn(values: readonly Value[], pointer: string | undefined): string[] {
  const known = values.filter(({ value }) => value !== null)
  const lacking = values
    .filter(({ value }) => value === null)
    .map(({ label, missing }) => `- ${escaped(`${label}: ${missing.join(', ')} missing`)}`)
  return [
    ...known.filter(({ id }) => !ofMonths.has(id)).map((value) => explained(value, value.at === pointer)),
    ...byMonth(known.filter(({ id }) => ofMonths.has(id))),
    ...(lacking.length > 0 ? [`Not known yet:\n\n${lacking.join('\n')}`] : []),
  ]
}

const ofMonths = new Set(energyOfMonths.map(({ id }) => id))

const byMonth = (months: readonly Value[]): string[] =>
  months.length === 0
    ? []
    : [`**energy of a day** ${months.map(({ text }, m) => `${monthNames[m]!} ${text}`).join(', ')}`]

/** Where the value belongs its source is shown as well; elsewhere the formula has to do. */
function explained({ label, text, formula, inputs, source, uncertainty }: Value, atHome: boolean): string {
  const from = inputs.map(({ name, text: typed }) => `${inWords[name] ?? name} ${typed}`).join(', ')
  const off = uncertainty === null ? '' : ` Uncertainty: ${uncertainty}.`
  const why = atHome ? `. Source: ${source}.${off}` : ''
  const k = /\bk\b/.test(formula) ? `. ${aboutK}` : ''
  return `**${escaped(`${label} ${text}`)}** = ${escaped(formula)}  \n${escaped(`with ${from}${k}${why}`)}`
}

/** Symbols of a model that no sheet prints. */
const inWords: Readonly<Record<string, string>> = { X: 'X (what the mounting adds to NOCT)' }
const aboutK = 'k is by how much each W/m2 of sun warms the cells above the air'
