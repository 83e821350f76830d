import { coldestBattery, frostOf, isInside, isProtected } from '../../review/frost.ts'
import type { ResolvedSystem } from '../../review/resolved.ts'
import { said } from '../../review/said.ts'
import { table } from '../tables/table.ts'
import { visible } from '../visible.ts'

/** How the battery is kept, as rows of the page. */
export function keptRows(system: ResolvedSystem): readonly (readonly string[])[] {
  const frost = frostOf(system)
  if (!frost) return []
  const { place, kept_above: kept, charge_protection: protection } = system.system.battery
  const warm = kept ? `, kept above ${said(kept)}` : ''
  const where = isInside(system) ? `inside${warm}` : place ? place.value : 'not given, counts as outside'
  const below = `below ${frost.limit} °C`
  const how = protection?.value === 'heated' ? `heated ${below}` : `charging is cut off ${below}`
  return [
    ['  kept', `${where}; coldest ${coldestBattery(system)} °C`],
    ['  in the frost', isProtected(system) ? how : `nothing is said to stop charging ${below}`],
  ]
}

/** What uses energy and what charges beside the sun, each with when it runs. */
export function usesText({ system }: ResolvedSystem): string {
  const loads = system.loads.map(({ name, power, hours, at, one_of: group, own_breaker: own }) => [
    `  ${visible(name?.text ?? 'a load')}`,
    said(power),
    hours ? `${said(hours)} a day` : '',
    at ? at.value : 'at any time',
    [...(group ? [`one of ${group.value}`] : []), ...(own?.value ? ['own breaker'] : [])].join(', '),
  ])
  const sources = system.other_sources.map(({ name, kind, power, hours }) => [
    `  ${visible(name?.text ?? 'a source')}`,
    said(power),
    hours ? `${said(hours)} a day` : '',
    kind?.value === 'wind' || kind?.value === 'hydro' ? 'by day and night' : 'from 8 h on',
    kind ? `charges, ${kind.value}` : 'charges',
  ])
  return table([...loads, ...sources])
}
