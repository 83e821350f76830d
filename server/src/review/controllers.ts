import type { Used } from './resolved.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'
import type { Controller } from '../records/records.generated.ts'

/** A controller with all arrays on its input. */
export interface ControllerGroup {
  readonly controller?: Used<Controller>
  /** The first is the one that names the controller. */
  readonly arrays: readonly [ResolvedArray, ...ResolvedArray[]]
}

/** The controllers of a system; arrays that share one come together. */
export function controllersOf({ arrays }: ResolvedSystem): readonly ControllerGroup[] {
  return arrays
    .filter(({ shares }) => !shares)
    .map((array) => {
      const id = array.entry.id?.value
      const others = arrays.filter((one) => one.shares && one.entry.shares_controller_with?.value === id)
      return { ...(array.controller && { controller: array.controller }), arrays: [array, ...others] as const }
    })
}

/** Sum over the arrays of a controller; null where one is not known. */
export function sumOf({ arrays }: ControllerGroup, of: (array: ResolvedArray) => number | null): number | null {
  return arrays.reduce<number | null>((sum, array) => {
    const one = of(array)
    return sum === null || one === null ? null : sum + one
  }, 0)
}

/** Array power that a controller can use on a bank of a nominal voltage [W]: its sheet's is for the lowest of its battery voltages. */
export function mostPower({ controller }: ControllerGroup, voltage: number | undefined): number | null {
  const { input, output } = controller?.record ?? {}
  const voltages = output?.battery_voltages.map(({ value }) => value) ?? []
  if (!input?.max_power || voltage === undefined) return null
  const times = voltages.length > 0 ? Math.max(1, Math.round(voltage / Math.min(...voltages))) : 1
  return times * input.max_power.value
}
