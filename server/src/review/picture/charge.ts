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
    const hours = soc.subarray(24 * day, 24 * day + 24)
    return { day: day + 1, lowest: Math.min(...hours), highest: Math.max(...hours) }
  })
  return { days, floor: 1 - bank.depth, pointer: '/battery' }
}
