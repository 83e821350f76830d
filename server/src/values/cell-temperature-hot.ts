import { cellTemperatureInSun } from './mounted.ts'
import { mountingSources } from '../physics/mounting-sources.ts'
import type { Panel } from '../records/records.generated.ts'
import type { Derived } from './derived.ts'
import { hottest, mountingRise, noct } from './inputs.ts'
import { mountingOf, type Site } from './site.ts'

export const cellTemperatureHot: Derived = {
  id: 'cell_temperature_hot',
  label: 'cell temperature on a hot day',
  unit: 'degC',
  formula: 'T hot + k x 1000 W/m2, k = (NOCT + X - 20 °C) / 800 W/m2',
  source: (panel, site) => sourcesOf(panel, site).join('; '),
  uncertainty: (panel, site) => mountingSources[mountingOf(panel, site)].uncertainty,
  pointer: '/noct/temperature',
  needs: [hottest, noct, mountingRise],
  compute: cellTemperatureInSun,
}

/** Which model gave the figure for this mounting, and where it is published. */
function sourcesOf(panel: Panel, site: Site): readonly string[] {
  const { model, source } = mountingSources[mountingOf(panel, site)]
  return [model, source]
}
