import { short } from '../../rules/band.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const disconnectRatingLow: ReviewRule = {
  id: 'disconnect-rating-low',
  severity: 'error',
  reason: 'A switch that cannot break the arc of direct current burns in the hand that opens it.',
  source: 'US National Electrical Code 690.13 and 690.8 (from memory)',

  check(system, figures) {
    return system.arrays.flatMap(({ entry }, i) => {
      const { current, voltage } = entry.disconnect
      const { isc_design_a: design, voc_cold_v: cold } = figures.arrays[i] ?? {}
      return [
        ...(current && design && current.value < design
          ? [
              {
                message: `1.25 x Isc is ${short(design)} A, more than the ${said(current)} of the disconnect`,
                suspects: [current] as const,
              },
            ]
          : []),
        ...(voltage && cold && voltage.value < cold
          ? [
              {
                message: `The string reaches ${short(cold)} V at ${system.coldest.value} °C, more than the ${said(voltage)} that the disconnect can switch`,
                suspects: [voltage] as const,
              },
            ]
          : []),
      ]
    })
  },
}
