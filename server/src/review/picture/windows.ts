import type { Figures } from '../figures.ts'
import { lowest } from '../lowest.ts'
import type { ResolvedSystem } from '../resolved.ts'
import { voltageNeeded } from '../rewire.ts'

/** What the voltage of an array's strings does from the hottest day to the coldest morning, and what it must keep [V]. */
export interface VoltageWindow {
  readonly id: string
  readonly pointer: string
  readonly vmp_hot_v: number | null
  readonly voc_cold_v: number | null
  /** What the controller needs to charge. */
  readonly least_v: number | null
  /** What the controller's input stands. */
  readonly most_v: number | null
  /** What the panels' insulation stands. */
  readonly panels_most_v: number | null
}

export function windowsOf(system: ResolvedSystem, { arrays }: Figures): readonly VoltageWindow[] {
  return system.arrays.map((array, i) => ({
    id: arrays[i]!.id,
    pointer: `/arrays/${i}/wiring`,
    vmp_hot_v: arrays[i]!.vmp_hot_v,
    voc_cold_v: arrays[i]!.voc_cold_v,
    least_v: voltageNeeded(system, array)?.run ?? null,
    most_v: array.controller?.record.input.max_voltage?.value ?? null,
    panels_most_v: lowest(array.panels.map(({ panel }) => panel?.record.limits.system_voltage))?.value ?? null,
  }))
}
