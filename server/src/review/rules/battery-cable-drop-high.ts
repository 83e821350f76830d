import { short } from '../../rules/band.ts'
import { batteryCable } from '../battery-figures.ts'
import { mostDrop } from '../next-cable.ts'
import { cableThatCarries, mainPair } from '../main-pair.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryCableDropHigh: ReviewRule = {
  id: 'battery-cable-drop-high',
  severity: 'warning',
  reason: 'The controller measures the battery through this cable; a drop in it makes every charge stop early.',
  source: '2 % is common practice, no source',

  check(system) {
    const own = system.system.battery.cable
    const cable = batteryCable(system)
    const drop = cable?.drop_pct ?? null
    if (!own.size || !cable || drop === null || drop <= mostDrop.battery) return null
    const size = own.size
    const pair = mainPair(system)
    const correction = pair ? cableThatCarries(system, pair) : undefined
    return {
      message: `${said(size)} over ${said(own.length)} lose ${short(drop)} % of the voltage at ${short(cable.current_a)} A, where 2 % is the most before the battery`,
      suspects: [size, own.length ?? size],
      ...(correction && { correction }),
    }
  },
}
