import type { PanelRule } from '../about.ts'

/** V */
const usual: readonly number[] = [
  24, 30, 36, 45, 48, 50, 60, 70, 75, 80, 90, 100, 120, 150, 200, 250, 300, 400, 500, 600, 700, 800, 1000, 1500,
]

export const systemVoltageSizeUnusual: PanelRule = {
  id: 'system-voltage-size-unusual',
  severity: 'information',
  reason: 'Maximum system voltages are round numbers.',
  source: 'common practice, no source',

  check({ limits: { system_voltage: limit } }) {
    if (!limit || limit.value <= 0 || usual.includes(limit.value)) return null
    return { message: `The system voltage ${limit.text} is none of the usual ones`, suspects: [limit] }
  },
}
