import { allChargeCurrent, bankOf } from './bank.ts'
import { cableFigures, inside, type CableFigures } from './cable-figures.ts'
import type { BatteryFigures } from './figures.ts'
import { demandOf, meanDemand } from './loads.ts'
import type { ResolvedSystem } from './resolved.ts'

/** Autonomy is that of the month with the heaviest loads, without any source. */
export function batteryFigures(system: ResolvedSystem): BatteryFigures {
  const bank = bankOf(system)
  if (!bank) return { usable_wh: null, autonomy_days: null, charge_rate_c: null }
  const usable = bank.energy * bank.depth
  const heaviest = heaviestDay(system)
  return {
    usable_wh: usable,
    autonomy_days: heaviest > 0 ? (usable * Math.sqrt(bank.roundTrip)) / heaviest : null,
    charge_rate_c: allChargeCurrent(system, bank) / bank.amperehours,
  }
}

/** Load of a mean day in the month with most of it [Wh]. */
export function heaviestDay(system: ResolvedSystem): number {
  const demand = demandOf(system)
  return Math.max(...Array.from({ length: 12 }, (_, m) => meanDemand(demand, m + 1).load))
}

/** The battery's cable at the charge current of all sources. */
export function batteryCable(system: ResolvedSystem): CableFigures | null {
  const bank = bankOf(system)
  return bank && cableFigures(system, system.system.battery.cable, inside, allChargeCurrent(system, bank), bank.voltage)
}
