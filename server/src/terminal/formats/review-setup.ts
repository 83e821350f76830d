import { celsius } from '../../findings/message.ts'
import { coldestBattery, frostOf, isInside, isProtected } from '../../review/frost.ts'
import type { ResolvedSystem } from '../../review/resolved.ts'
import { said } from '../../review/said.ts'
import { table } from '../tables/table.ts'
import { visible } from '../visible.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue, phrase, sayIn, type Phrase } from '../../wording/phrase.ts'

/** How the battery is kept, as rows of the page. */
export function keptRows(system: ResolvedSystem, bundle: Bundle | undefined): readonly (readonly string[])[] {
  const say = sayIn(bundle)
  const frost = frostOf(system)
  if (!frost) return []
  const { place, kept_above: kept, charge_protection: protection } = system.system.battery
  const where = isInside(system)
    ? kept
      ? say`inside, kept above ${said(kept)}`
      : say`inside`
    : place
      ? place.value === 'outside'
        ? say`outside`
        : place.value
      : say`not given, counts as outside`
  const { limit } = frost
  const how =
    protection?.value === 'heated'
      ? say`heated below ${celsius(limit)}`
      : say`charging is cut off below ${celsius(limit)}`
  return [
    [`  ${say`kept`}`, say`${where}; coldest ${celsius(coldestBattery(system))}`],
    [
      `  ${say`in the frost`}`,
      isProtected(system) ? how : say`nothing is said to stop charging below ${celsius(limit)}`,
    ],
  ]
}

/** What uses energy and what charges beside the sun, each with when it runs. */
export function usesText({ system }: ResolvedSystem, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const loads = system.loads.map(({ name, power, hours, at, one_of: group, own_breaker: own }) => [
    `  ${visible(name?.text ?? say`a load`)}`,
    said(power),
    hours ? say`${said(hours)} a day` : '',
    at ? translated(whens[at.value] ?? at.value, bundle) : say`at any time`,
    [...(group ? [say`one of ${group.value}`] : []), ...(own?.value ? [say`own breaker`] : [])].join(', '),
  ])
  const sources = system.other_sources.map(({ name, kind, power, hours }) => [
    `  ${visible(name?.text ?? say`a source`)}`,
    said(power),
    hours ? say`${said(hours)} a day` : '',
    kind?.value === 'wind' || kind?.value === 'hydro' ? say`by day and night` : say`from 8 h on`,
    kind ? say`charges, ${kinds[kind.value] ?? kind.value}` : say`charges`,
  ])
  return table([...loads, ...sources])
}

/** When a load runs, as records say it in a word. */
const whens: Readonly<Record<string, string>> = {
  day: inCatalogue`day`,
  evening: inCatalogue`evening`,
  night: inCatalogue`night`,
}

/** What charges, as records name it. */
const kinds: Readonly<Record<string, Phrase>> = {
  alternator: phrase`alternator`,
  'dc-dc': phrase`dc-dc`,
  shore: phrase`shore`,
  generator: phrase`generator`,
  wind: phrase`wind`,
  hydro: phrase`hydro`,
  other: phrase`other`,
}
