import { joinWords } from '../../findings/join-words.ts'
import { inverterEfficiency } from '../bank.ts'
import type { ResolvedSystem } from '../resolved.ts'
import { said } from '../said.ts'
import { usualLosses } from '../year-yield.ts'

/** What the figures of a system rest on, in sentences; temperatures are apart, as a reader has units of their own. */
export function assumptionsOf({ system, climate, weather }: ResolvedSystem): readonly string[] {
  const { inverter, loads } = system
  const shaded = system.surfaces.filter(({ shading }) => (shading?.value ?? 0) > 0)
  const shades = shaded.map(({ id, shading }) => `${said(shading)} on ${id?.text ?? 'a surface'}`)
  const { name, source } = climate?.record ?? {}
  const days = weather
    ? 'hour by hour as its weather file has it'
    : 'in runs of dull and bright days around its monthly means'
  return [
    ...(climate ? [`Sun and air of ${name?.text ?? 'the place'}, ${days}${source ? ` (${source.text})` : ''}.`] : []),
    ...(shades.length > 0 ? [`Shade takes ${joinWords(shades)}, evenly.`] : []),
    `Dirt, connections and unlike panels take ${Math.round(100 * (1 - usualLosses))} %.`,
    ...(loads.some(({ supply }) => supply?.value === 'ac')
      ? [`The inverter passes on ${Math.round(100 * inverterEfficiency(inverter.efficiency?.value))} %.`]
      : []),
    'Loads and other sources run as described.',
  ]
}
