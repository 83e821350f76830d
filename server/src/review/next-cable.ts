import { type Catalogue, type Said, estimate, figure, sayFrom } from '../findings/message.ts'
import type { Proposal } from '../findings/rule.ts'
import { gaugeArea } from '../physics/cable.ts'
import { gaugeText } from '../quantities/gauge.ts'
import { batteryCable } from './battery-figures.ts'
import { allowable, inside, onRoof, perMetre, type CableFigures, type Surroundings } from './cable-figures.ts'
import type { ArrayFigures } from './figures.ts'
import type { ResolvedArray, ResolvedSystem, Cable } from './resolved.ts'

const metric = [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120]
const gauges = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3]

export const nextCablePhrases = {
  id: 'next-cable',
  messages: { figures: '{known}', drop: '{drop} drop' },
} as const satisfies Catalogue
const say = sayFrom(nextCablePhrases)

/** Most that is recommended to be lost in an array's cable and before the battery [%]. */
export const mostDrop = { array: 3, battery: 2 }

/** The next larger size of an array's cable that carries its design current and loses no more than is recommended. */
export function nextArrayCable(
  system: ResolvedSystem,
  { entry }: ResolvedArray,
  figures: ArrayFigures,
): Proposal | undefined {
  const needs = { current: figures.isc_design_a ?? 0, drop: mostDrop.array }
  return nextThatDoes(system, entry.cable, figures.cable, onRoof, needs)
}

/** The same of the battery's cable, which must carry a current, or its fuse. */
export const nextBatteryCable = (system: ResolvedSystem, current: number): Proposal | undefined =>
  nextThatDoes(system, system.system.battery.cable, batteryCable(system), inside, { current, drop: mostDrop.battery })

function nextThatDoes(
  system: ResolvedSystem,
  cable: Cable,
  now: CableFigures | null,
  where: Surroundings,
  most: { readonly current: number; readonly drop: number },
): Proposal | undefined {
  const { size } = cable
  return nextCable(cable, (area) => {
    const iz = allowable(cable, area, where)
    const scale = size ? perMetre(system, cable, area, where) / perMetre(system, cable, size.value, where) : 1
    const drop = now?.drop_pct ? now.drop_pct * scale : null
    if ((iz !== null && iz < most.current) || (drop !== null && most.drop < drop)) return null
    const lost = drop === null ? [] : [say({ say: 'drop', with: { drop: estimate(drop, '%') } })]
    const known = [...(iz === null ? [] : [figure(iz, 'A')]), ...lost]
    return say({ say: 'figures', with: { known: { list: known } } })
  })
}

/** The next larger size in the cable's own measure that is good [m2 in]. Nothing where none is. */
function nextCable(cable: Cable, good: (size: number) => Said | null): Proposal | undefined {
  const { size } = cable
  if (!size) return undefined
  const inGauge = size.quantity.unit === 'AWG'
  const sizes = inGauge
    ? gauges.map((g) => ({ area: gaugeArea(g) / 1e6, text: gaugeText(g) }))
    : metric.map((mm2) => ({ area: mm2 / 1e6, text: `${mm2} mm2` }))
  for (const { area, text } of sizes) {
    const why = size.value * 1.01 < area ? good(area) : null
    if (why !== null) return { field: size, text, why, certainty: 'guess' }
  }
  return undefined
}
