import { gaugeArea } from '../physics/cable.ts'
import { gaugeText } from '../quantities/gauge.ts'
import type { Proposal } from '../rules/rule.ts'
import type { Cable } from './resolved.ts'

const metric = [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120]
const gauges = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3]

/** The next larger size in the cable's own measure that is good [m2 in]. Nothing where none is. */
export function nextCable(cable: Cable, good: (size: number) => string | null): Proposal | undefined {
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
