import type { Climate } from '../../records/records.generated.ts'
import { short } from '../band.ts'
import type { Rule } from '../rule.ts'

export const polarNightSunny: Rule<Climate> = {
  id: 'polar-night-sunny',
  severity: 'warning',
  reason: 'Beyond the polar circle the sun does not rise for part of the winter.',
  source: 'geometry of the sun',

  check({ latitude, sun }) {
    if (!latitude || Math.abs(latitude.value) <= 66.6 || sun.length < 12 || sun.some(({ value }) => value <= 0.5))
      return null
    return {
      message: `At a latitude of ${latitude.text} no winter month can have ${short(Math.min(...sun.map((s) => s.value)))} kWh/m2 a day`,
      suspects: [latitude],
    }
  },
}
