import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

export const noctImpossible = panelRule({
  id: 'noct-impossible',
  severity: 'error',
  reason:
    'NOCT is a little above 40 °C for panels in the open; such a number is an air temperature, an irradiance or °F.',
  source: 'open module ratings of a public list, 2015 to 2022: 41 to 65 °C',
  messages: {
    impossible: 'NOCT {temperature} is outside 30 to 80 °C',
  },

  check({ noct: { temperature } }) {
    if (!temperature || inside(temperature.value, [30, 80])) return null
    return { say: 'impossible', with: { temperature }, suspects: [temperature] }
  },
})
