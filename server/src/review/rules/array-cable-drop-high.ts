import { short } from '../../rules/band.ts'
import { mostDrop, nextArrayCable } from '../next-cable.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const arrayCableDropHigh: ReviewRule = {
  id: 'array-cable-drop-high',
  severity: 'information',
  reason: 'What is lost in the cable is gone, and a controller that only switches then charges the battery too little.',
  source: '3 % for feeders is recommended for boats (ABYC E-11, as quoted by marine trade pages)',

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const { cable } = figures.arrays[i] ?? {}
      const own = array.entry.cable
      const drop = cable?.drop_pct ?? null
      if (!own.size || !cable || drop === null || drop <= mostDrop.array) return []
      const correction = nextArrayCable(system, array, figures.arrays[i]!)
      return [
        {
          message: `${said(own.size)} over ${said(own.length)} lose ${short(drop)} % of the voltage at ${short(cable.current_a)} A, where 3 % is recommended`,
          suspects: [own.size, own.length ?? own.size] as const,
          severity: drop > 10 ? ('warning' as const) : ('information' as const),
          ...(correction && { correction }),
        },
      ]
    })
  },
}
