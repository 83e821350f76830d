import { figure } from '../../findings/message.ts'
import { climateRule } from '../over.ts'

export const polarNightSunny = climateRule({
  id: 'polar-night-sunny',
  severity: 'warning',
  reason: 'Beyond the polar circle the sun does not rise for part of the winter.',
  source: 'geometry of the sun',
  messages: {
    found: 'At a latitude of {latitude} no winter month can have {value} a day',
  },

  check({ latitude, sun }) {
    if (!latitude || Math.abs(latitude.value) <= 66.6 || sun.length < 12 || sun.some(({ value }) => value <= 0.5))
      return null
    return {
      say: 'found',
      with: { latitude, value: figure(Math.min(...sun.map((s) => s.value)), 'kWh/m2') },
      suspects: [latitude],
    }
  },
})
