import { celsius } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

const crystalline = [41, 55] as const
const others = [40, 65] as const
/** None of the some 1 560 crystalline families in the open ratings runs cooler than 41 °C; two more are granted, estimated. */
const coolestFramed = 39
/** Nor does any of 3 084 crystalline ones above 1 m2 run hotter than 54.1 °C, as small ones do; one more is granted, estimated. */
const hottestLarge = 55
const large = 1

export const noctUnusual = panelRule({
  id: 'noct-unusual',
  severity: 'information',
  reason: 'NOCT moves every figure for the heat; most panels are between 42 and 50 °C.',
  source:
    'open module ratings of a public list, 2015 to 2022: 1st to 99th percentile of crystalline 42.5 to 52.3 °C, thin film 41 to 63 °C',
  messages: {
    unusual: 'NOCT {temperature} is outside {value} to {value2} that is usual',
  },

  check(panel) {
    const { temperature } = panel.noct
    const usual = isCrystalline(panel) ? crystalline : others
    const isFramed = usual === crystalline && panel.construction?.value === 'rigid'
    const { length, width } = panel.size
    const isLarge = length !== undefined && width !== undefined && length.value * width.value > large
    if (!temperature || inside(temperature.value, usual) || !inside(temperature.value, [30, 80])) return null
    const isBeyond = temperature.value < coolestFramed || (isLarge && temperature.value > hottestLarge)
    return {
      say: 'unusual',
      with: {
        temperature,
        value: { value: usual[0], unit: '°C', bare: true },
        value2: celsius(usual[1]),
      },
      suspects: [temperature],
      ...(isFramed && isBeyond && { severity: 'warning' as const }),
    }
  },
})
