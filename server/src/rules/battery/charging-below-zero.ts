import type { Battery } from '../../records/records.generated.ts'
import { chemistries } from '../chemistry.ts'
import type { Rule } from '../rule.ts'

export const chargingBelowZero: Rule<Battery> = {
  id: 'charging-below-zero',
  severity: 'warning',
  reason: 'Below freezing lithium plates the electrode when it is charged; the cell is damaged and may short inside.',
  source: 'makers’ teaching pages on LiFePO4: no charging below 0 °C',

  check({ chemistry, charge: { lowest_temperature: lowest, low_temperature_cutoff: cutoff } }) {
    if (!chemistry || !lowest || lowest.value >= 0 || !chemistries[chemistry.value].lithium || cutoff?.value)
      return null
    return {
      message: `${chemistries[chemistry.value].name} is said to be charged down to ${lowest.text}; below 0 °C that takes a heater or special cells, and no low-temperature cut-off is recorded`,
      suspects: [lowest, chemistry],
    }
  },
}
