import { figure } from '../../findings/message.ts'
import { bankOf } from '../bank.ts'
import { clampOf, pwmPower } from '../pwm.ts'
import { elsewhere } from '../rule.ts'
import { countOf } from '../strings.ts'
import { reviewRule } from '../rule.ts'

export const pwmMismatch = reviewRule({
  id: 'pwm-mismatch',
  severity: 'warning',
  reason:
    'A controller that only switches holds the panels at battery voltage, far below their maximum power point when they have too many cells.',
  source: 'single-diode model of the panel at 800 W/m2 and air of 20 °C; a ratio of 1.6 is common practice, no source',
  messages: {
    insteadOfLost: ': {power} instead of {power2}',
    mismatch:
      'A PWM controller holds the string at about {voltage}, and it works best at {voltage2}{watts}; an MPPT controller loses nothing',
  },

  check(system) {
    const bank = bankOf(system)
    if (!bank) return null
    return system.arrays.flatMap((array) => {
      const panels = array.panels[0]
      const vmp = panels?.panel?.record.stc.vmp
      const series = array.entry.wiring.in_series?.value ?? 1
      const type = array.controller?.record.type
      const place = array.entry.controller.id ?? type
      if (type?.value !== 'pwm' || !vmp || !place) return []
      const ratio = (vmp.value * series) / bank.voltage
      if (ratio <= 1.6) return []
      const held = clampOf(array, bank)!
      const power = pwmPower(system, panels, held)
      const count = array.panels.reduce((sum, p) => sum + countOf(p), 0)
      const watts = power
        ? {
            say: 'insteadOfLost',
            with: {
              power: figure(power.clamped * count, 'W'),
              power2: figure(power.best * count, 'W'),
            },
          }
        : null
      return [
        {
          say: 'mismatch',
          with: { voltage: figure(held * series, 'V'), voltage2: figure(vmp.value * series, 'V'), watts },
          suspects: [place],
          ...elsewhere(panels.panel, vmp),
        },
      ]
    })
  },
})
