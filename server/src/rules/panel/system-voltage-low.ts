import { panelRule } from '../about.ts'

export const systemVoltageLow = panelRule({
  id: 'system-voltage-low',
  severity: 'warning',
  reason: 'A panel must bear at least its own voltage on a cold day.',
  source: '1.2 Voc covers -40 °C for silicon (NEC table 690.7; from memory)',
  messages: {
    low: 'The system voltage {limit} is below 1.2 times Voc {voc}',
  },

  check({ limits: { system_voltage: limit }, stc: { voc } }) {
    if (!limit || !voc || limit.value <= 0 || limit.value >= 1.2 * voc.value) return null
    return { say: 'low', with: { limit, voc }, suspects: [limit, voc] }
  },
})
