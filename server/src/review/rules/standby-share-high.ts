import { short } from '../../rules/band.ts'
import { inverterEfficiency } from '../bank.ts'
import type { ReviewRule } from '../rule.ts'

export const standbyShareHigh: ReviewRule = {
  id: 'standby-share-high',
  severity: 'information',
  reason: 'An inverter that is always on often takes more than what it feeds.',
  source: 'common practice, no source',

  check({ system }) {
    const { standby, hours, efficiency } = system.inverter
    if (!standby || system.loads.length === 0) return null
    const own = standby.value * (hours ? hours.value / 3600 : 24)
    const whole = system.loads.reduce((sum, { power, hours: on, days_a_week: days, supply }) => {
      const day = ((power?.value ?? 0) * (on?.value ?? 0) * Math.min(7, days?.value ?? 7)) / 7 / 3600
      return sum + (supply?.value === 'ac' ? day / inverterEfficiency(efficiency?.value) : day)
    }, own)
    if (own <= 0.3 * whole) return null
    return {
      message: `The inverter's standby takes ${Math.round(own)} Wh of ${Math.round(whole)} Wh a day, ${short((100 * own) / whole)} %; switch it on only when it is needed`,
      suspects: [standby],
    }
  },
}
