import { chemistries } from '../../rules/chemistry.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const lithiumInFrost = reviewRule({
  id: 'lithium-in-frost',
  severity: 'warning',
  reason: 'Below freezing lithium plates the electrode when it is charged; the cell is damaged and may short inside.',
  source: 'makers’ teaching pages on LiFePO4: no charging below 0 °C',
  messages: {
    found:
      'It gets as cold as {coldest}, {name} must not be charged below {limit} °C, and no low_temperature_cutoff is recorded; fit one or heat the battery, and record it',
  },

  check({ system, battery, coldest }) {
    const { chemistry, charge } = battery?.record ?? {}
    const place = system.battery.battery.id ?? chemistry
    if (!battery || !chemistry || !place || !chemistries[chemistry.value].lithium) return null
    const limit = charge?.lowest_temperature?.value ?? chemistries[chemistry.value].coldest
    if (limit <= coldest.value || charge?.low_temperature_cutoff?.value || system.battery.low_temperature_cutoff?.value)
      return null
    return {
      say: 'found',
      with: { coldest: { value: coldest.value, unit: '°C' }, name: chemistries[chemistry.value].name, limit },
      suspects: [place],
      ...elsewhere(battery, charge?.lowest_temperature),
    }
  },
})
