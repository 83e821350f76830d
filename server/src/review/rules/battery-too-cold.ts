import { chemistries } from '../../rules/chemistry.ts'
import { coldestBattery } from '../frost.ts'
import { elsewhere } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryTooCold: ReviewRule = {
  id: 'battery-too-cold',
  severity: 'warning',
  reason: 'Colder than its maker permits a battery gives little, and a flat lead-acid battery freezes and bursts.',
  source: 'the maker’s limit, or the trade value of its chemistry (from memory)',

  check(resolved) {
    const { system, battery } = resolved
    const cold = coldestBattery(resolved)
    const { chemistry, discharge } = battery?.record ?? {}
    const place = system.battery.battery.id ?? chemistry
    if (!battery || !chemistry || !place) return null
    const typed = discharge?.lowest_temperature
    const facts = chemistries[chemistry.value]
    const limit = typed?.value ?? facts.coldestInUse
    if (limit <= cold) return null
    return {
      message: `It gets as cold as ${cold} °C, and the battery may be used down to ${limit} °C${typed ? '' : `, as is usual for ${facts.name}`}; keep it where it is warmer`,
      suspects: [place],
      severity: typed ? 'warning' : 'information',
      ...elsewhere(battery, typed),
    }
  },
}
