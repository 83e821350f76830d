import type { Used } from './resolved.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'
import type { Controller } from '../records/records.generated.ts'

/** A controller with all arrays on its input. */
export interface ControllerGroup {
  readonly controller?: Used<Controller>
  /** The first is the one that names the controller. */
  readonly arrays: readonly [ResolvedArray, ...ResolvedArray[]]
  /** Which of the system's arrays these are, from 0. */
  readonly indices: readonly [number, ...number[]]
}

/** The controllers of a system; arrays that share one come together. */
export function controllersOf({ arrays }: ResolvedSystem): readonly ControllerGroup[] {
  return arrays.flatMap((array, i) => {
    if (array.shares) return []
    const id = array.entry.id?.value
    const others = [...arrays.keys()].filter(
      (k) => arrays[k]!.shares && arrays[k]!.entry.shares_controller_with?.value === id,
    )
    return {
      ...(array.controller && { controller: array.controller }),
      arrays: [array, ...others.map((k) => arrays[k]!)] as const,
      indices: [i, ...others] as const,
    }
  })
}

/** Sum over the arrays of a controller, each with its index in the system; null where one is not known. */
export function sumOf(
  { arrays, indices }: ControllerGroup,
  of: (array: ResolvedArray, index: number) => number | null,
): number | null {
  return arrays.reduce<number | null>((sum, array, k) => {
    const one = of(array, indices[k]!)
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
