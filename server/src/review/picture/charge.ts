import { bankOf } from '../bank.ts'
import { yearOf } from '../year.ts'
import type { ResolvedSystem } from '../resolved.ts'

/** How full the battery is, day by day through a usual year: shares of its capacity, 0 to 1. */
export interface Charge {
  readonly days: readonly { readonly day: number; readonly lowest: number; readonly highest: number }[]
  /** Below this it is not used. */
  readonly floor: number
  readonly pointer: string
}

/** Null without a climate, a battery, or panels that say enough. */
export function chargeOf(system: ResolvedSystem): Charge | null {
  const soc = yearOf(system)?.hours?.soc
  const bank = bankOf(system)
  if (!soc || !bank) return null
  const days = Array.from({ length: Math.floor(soc.length / 24) }, (_, day) => {
    let [lowest, highest] = [1, 0]
    for (let h = 24 * day; h < 24 * day + 24; h++) {
      if (soc[h]! < lowest) lowest = soc[h]!
      if (soc[h]! > highest) highest = soc[h]!
    }
    return { day: day + 1, lowest, highest }
  })
  return { days, floor: 1 - bank.depth, pointer: '/battery' }
}
