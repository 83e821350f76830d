import type { Panel } from '../records/records.generated.ts'
import { panelYear, yearLacks } from './panel-year.ts'
import type { Site } from './site.ts'
import type { InputShown } from './value.ts'

/**
 * Energy over the output warranty with the panel as weak as it may become: each year at the share that its warranty step
 * guarantees, never in between.
 */
export function warrantedEnergy(panel: Panel, site: Site): InputShown | undefined {
  const year = panelYear(panel, site)
  const years = fullYears(panel)
  if (!year || years === 0) return undefined
  const value = (year.total / 1000) * years
  const text = `${Math.round(value)} kWh: ${Number((year.total / 1000).toPrecision(3))} kWh a year for ${Number(years.toPrecision(3))} years at full power (${year.model})`
  return { name: 'warranted energy', value, unit: 'kWh', text, pointer: null }
}

/** What the sheet and the library would have to say for it. */
export const warrantedEnergyLacks = (panel: Panel, site: Site): readonly string[] => [
  ...yearLacks(panel, site),
  ...(fullYears(panel) > 0 ? [] : ['output warranty']),
]

/** The output warranty as years at full power: each step's years times its share. */
export function fullYears({ warranty: { output } }: Panel): number {
  const steps = output.flatMap(({ years, at_least: share }) =>
    years && share ? [{ until: years.value, share: share.value }] : [],
  )
  let from = 0
  let sum = 0
  for (const { until, share } of steps.sort((a, b) => a.until - b.until)) {
    sum += Math.max(0, until - from) * share
    from = Math.max(from, until)
  }
  return sum
}
