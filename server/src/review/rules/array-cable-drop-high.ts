import { estimate, figure } from '../../findings/message.ts'
import { mostDrop, nextArrayCable } from '../next-cable.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const arrayCableDropHigh = reviewRule({
  id: 'array-cable-drop-high',
  severity: 'information',
  reason: 'What is lost in the cable is gone, and a controller that only switches then charges the battery too little.',
  source: '3 % for feeders is recommended for boats (ABYC E-11, as quoted by marine trade pages)',
  messages: {
    high: '{size} over {length} one way loses {drop} at {currentA}; aim for 3 %',
  },

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const { cable } = figures.arrays[i] ?? {}
      const own = array.entry.cable
      const drop = cable?.drop_pct ?? null
      if (!own.size || !cable || drop === null || Number(drop.toPrecision(2)) <= mostDrop.array) return []
      const correction = nextArrayCable(system, array, figures.arrays[i]!)
      return [
        {
          say: 'high',
          with: {
            size: said(own.size),
            length: said(own.length),
            drop: estimate(drop, '%'),
            currentA: figure(cable.current_a, 'A'),
          },
          suspects: [own.size, own.length ?? own.size],
          severity: drop > 10 ? ('warning' as const) : ('information' as const),
          ...(correction && { correction }),
        },
      ]
    })
  },
})
