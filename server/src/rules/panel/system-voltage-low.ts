import type { PanelRule } from '../about.ts'

export const systemVoltageLow: PanelRule = {
  id: 'system-voltage-low',
  severity: 'warning',
  reason: 'A panel must bear at least its own voltage on a cold day.',
  source: '1.2 Voc covers -40 °C for silicon (NEC table 690.7; from memory)',

  check({ limits: { system_voltage: limit }, stc: { voc } }) {
    if (!limit || !voc || limit.value <= 0 || limit.value >= 1.2 * voc.value) return null
    return { message: `The system voltage ${limit.text} is below 1.2 times Voc ${voc.text}`, suspects: [limit, voc] }
  },
}
