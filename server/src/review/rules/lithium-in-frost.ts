import { celsius } from '../../findings/message.ts'
import { chemistries } from '../../values/chemistry.ts'
import { coldestBattery, isProtected } from '../frost.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const lithiumInFrost = reviewRule({
  id: 'lithium-in-frost',
  severity: 'warning',
  reason: 'Below freezing lithium plates the electrode when it is charged; the cell is damaged and may short inside.',
  source: 'makers’ teaching pages on LiFePO4: no charging below 0 °C',
  messages: {
    found:
      'It gets as cold as {cold}; charging below {limit} damages {name}. Record the cut-off, a heater, or that it is kept warm',
  },

  check(resolved) {
    const { system, battery } = resolved
    const { chemistry, charge } = battery?.record ?? {}
    const place = system.battery.battery.id ?? chemistry
    if (!battery || !chemistry || !place || !chemistries[chemistry.value].lithium) return null
    const limit = charge?.lowest_temperature?.value ?? chemistries[chemistry.value].coldest
    const cold = coldestBattery(resolved)
    if (limit <= cold || isProtected(resolved)) return null
    return {
      say: 'found',
      with: {
        cold: celsius(cold),
        name: chemistries[chemistry.value].name,
        limit: celsius(limit),
      },
      suspects: [place],
      ...elsewhere(battery, charge?.lowest_temperature),
    }
  },
})
