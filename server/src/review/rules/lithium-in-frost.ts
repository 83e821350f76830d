import { chemistries } from '../../rules/chemistry.ts'
import { coldestBattery, isProtected } from '../frost.ts'
import { elsewhere } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const lithiumInFrost: ReviewRule = {
  id: 'lithium-in-frost',
  severity: 'warning',
  reason: 'Below freezing lithium plates the electrode when it is charged; the cell is damaged and may short inside.',
  source: 'makers’ teaching pages on LiFePO4: no charging below 0 °C',

  check(resolved) {
    const { system, battery } = resolved
    const { chemistry, charge } = battery?.record ?? {}
    const place = system.battery.battery.id ?? chemistry
    if (!battery || !chemistry || !place || !chemistries[chemistry.value].lithium) return null
    const limit = charge?.lowest_temperature?.value ?? chemistries[chemistry.value].coldest
    const cold = coldestBattery(resolved)
    if (limit <= cold || isProtected(resolved)) return null
    return {
      message: `It gets as cold as ${cold} °C, ${chemistries[chemistry.value].name} must not be charged below ${limit} °C, and no charge_protection is recorded; fit a cut-off or heat the battery, and record it`,
      suspects: [place],
      ...elsewhere(battery, charge?.lowest_temperature),
    }
  },
}
