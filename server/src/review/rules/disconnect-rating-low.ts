import { celsius, figure } from '../../findings/message.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const disconnectRatingLow = reviewRule({
  id: 'disconnect-rating-low',
  severity: 'error',
  reason: 'A switch that cannot break the arc of direct current burns in the hand that opens it.',
  source: 'US National Electrical Code 690.13 and 690.8 (from memory)',
  messages: {
    iscIsMore: '1.25 x Isc is {design}, more than the {current} of the disconnect',
    theStringReaches: 'The string reaches {cold} at {coldest}, more than the {voltage} that the disconnect can switch',
  },

  check(system, figures) {
    return system.arrays.flatMap(({ entry }, i) => {
      const { current, voltage } = entry.disconnect
      const { isc_design_a: design, voc_cold_v: cold } = figures.arrays[i] ?? {}
      return [
        ...(current && design && current.value < design
          ? [
              {
                say: 'iscIsMore',
                with: { design: figure(design, 'A'), current: said(current) },
                suspects: [current],
              } as const,
            ]
          : []),
        ...(voltage && cold && voltage.value < cold
          ? [
              {
                say: 'theStringReaches',
                with: {
                  cold: figure(cold, 'V'),
                  coldest: celsius(system.coldest.value),
                  voltage: said(voltage),
                },
                suspects: [voltage],
              } as const,
            ]
          : []),
      ]
    })
  },
})
