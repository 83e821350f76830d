import { joinWords } from '../../findings/join-words.ts'
import { inverterEfficiency } from '../bank.ts'
import type { ResolvedSystem } from '../resolved.ts'
import { said } from '../said.ts'
import { usualLosses } from '../year-yield.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { phrase, sayIn } from '../../wording/phrase.ts'

/** What the figures of a system rest on, in sentences; temperatures are apart, as a reader has units of their own. */
export function assumptionsOf({ system, climate, weather }: ResolvedSystem, bundle?: Bundle): readonly string[] {
  const say = sayIn(bundle)
  const { inverter, loads } = system
  const shaded = system.surfaces.filter(({ shading }) => (shading?.value ?? 0) > 0)
  const shades = shaded.map(({ id, shading }) => say`${said(shading)} on ${id?.text ?? phrase`a surface`}`)
  const { name, source } = climate?.record ?? {}
  const days = weather
    ? phrase`hour by hour as its weather file has it`
    : phrase`in runs of dull and bright days around its monthly means`
  return [
    ...(climate
      ? [say`Sun and air of ${name?.text ?? phrase`the place`}, ${days}${source ? ` (${source.text})` : ''}.`]
      : []),
    ...(shades.length > 0 ? [say`Shade takes ${joinWords(shades, bundle)}, evenly.`] : []),
    say`Dirt, connections and unlike panels take ${Math.round(100 * (1 - usualLosses))} %.`,
    ...(loads.some(({ supply }) => supply?.value === 'ac')
      ? [say`The inverter passes on ${Math.round(100 * inverterEfficiency(inverter.efficiency?.value))} %.`]
      : []),
    say`Loads and other sources run as described.`,
  ]
}
