import { celsius } from '../../findings/message.ts'
import { chemistries } from '../../values/chemistry.ts'
import { coldestBattery } from '../frost.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const batteryTooCold = reviewRule({
  id: 'battery-too-cold',
  severity: 'warning',
  reason: 'Colder than its maker permits a battery gives little, and a flat lead-acid battery freezes and bursts.',
  source: 'the maker’s limit, or the trade value of its chemistry (from memory)',
  messages: {
    asIsUsual: ', as is usual for {name}',
    cold: 'It gets as cold as {cold}, and the battery may be used down to {limit}{part}; keep it where it is warmer',
  },

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
      say: 'cold',
      with: {
        cold: celsius(cold),
        limit: celsius(limit),
        part: typed ? null : { say: 'asIsUsual', with: { name: facts.name } },
      },
      suspects: [place],
      severity: typed ? 'warning' : 'information',
      ...elsewhere(battery, typed),
    }
  },
})
