import { panelRule } from '../about.ts'

/** V */
const usual: readonly number[] = [
  24, 30, 36, 45, 48, 50, 60, 70, 75, 80, 90, 100, 120, 150, 200, 250, 300, 400, 500, 600, 700, 800, 1000, 1500,
]

export const systemVoltageSizeUnusual = panelRule({
  id: 'system-voltage-size-unusual',
  severity: 'information',
  reason: 'Maximum system voltages are round numbers.',
  source: 'common practice, no source',
  messages: {
    unusual: 'The system voltage {limit} is none of the usual ones',
  },

  check({ limits: { system_voltage: limit } }) {
    if (!limit || limit.value <= 0 || usual.includes(limit.value)) return null
    return { say: 'unusual', with: { limit }, suspects: [limit] }
  },
})
