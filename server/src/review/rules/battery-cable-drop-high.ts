import { estimate, figure } from '../../findings/message.ts'
import { batteryCable } from '../battery-figures.ts'
import { mostDrop } from '../next-cable.ts'
import { cableThatCarries, mainPair } from '../main-pair.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const batteryCableDropHigh = reviewRule({
  id: 'battery-cable-drop-high',
  severity: 'warning',
  reason: 'The controller measures the battery through this cable; a drop in it makes every charge stop early.',
  source: '2 % is common practice, no source',
  messages: {
    high: '{size} over {length} loses {drop} at {currentA}; aim for 2 % before the battery',
  },

  check(system) {
    const own = system.system.battery.cable
    const cable = batteryCable(system)
    const drop = cable?.drop_pct ?? null
    if (!own.size || !cable || drop === null || Number(drop.toPrecision(2)) <= mostDrop.battery) return null
    const size = own.size
    const pair = mainPair(system)
    const correction = pair ? cableThatCarries(system, pair) : undefined
    return {
      say: 'high',
      with: {
        size: said(size),
        length: said(own.length),
        drop: estimate(drop, '%'),
        currentA: figure(cable.current_a, 'A'),
      },
      suspects: [size, own.length ?? size],
      ...(correction && { correction }),
    }
  },
})
