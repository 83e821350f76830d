import { estimate, figure } from '../../findings/message.ts'
import { inverterEfficiency } from '../bank.ts'
import { reviewRule } from '../rule.ts'

export const standbyShareHigh = reviewRule({
  id: 'standby-share-high',
  severity: 'information',
  reason: 'An inverter that is always on often takes more than what it feeds.',
  source: 'common practice, no source',
  messages: {
    high: "The inverter's standby takes {own} of {all} a day, {share}; switch it on only when it is needed",
  },

  check({ system }) {
    const { standby, hours, efficiency } = system.inverter
    if (!standby || system.loads.length === 0) return null
    const own = standby.value * (hours ? hours.value / 3600 : 24)
    const all = system.loads.reduce((sum, { power, hours: on, days_a_week: days, supply }) => {
      const day = ((power?.value ?? 0) * (on?.value ?? 0) * Math.min(7, days?.value ?? 7)) / 7 / 3600
      return sum + (supply?.value === 'ac' ? day / inverterEfficiency(efficiency?.value) : day)
    }, own)
    if (own <= 0.3 * all) return null
    return {
      say: 'high',
      with: { own: figure(own, 'Wh'), all: figure(all, 'Wh'), share: estimate((100 * own) / all, '%') },
      suspects: [standby],
    }
  },
})
