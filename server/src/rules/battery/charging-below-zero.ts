import { chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const chargingBelowZero = batteryRule({
  id: 'charging-below-zero',
  severity: 'warning',
  reason: 'Below freezing lithium plates the electrode when it is charged; the cell is damaged and may short inside.',
  source: 'makers’ teaching pages on LiFePO4: no charging below 0 °C',
  messages: {
    found:
      '{name} is said to be charged down to {lowest}; below 0 °C that takes a heater or special cells, and no low-temperature cut-off is recorded',
  },

  check({ chemistry, charge: { lowest_temperature: lowest, low_temperature_cutoff: cutoff } }) {
    if (!chemistry || !lowest || lowest.value >= 0 || !chemistries[chemistry.value].lithium || cutoff?.value)
      return null
    return {
      say: 'found',
      with: { name: chemistries[chemistry.value].name, lowest },
      suspects: [lowest, chemistry],
    }
  },
})
