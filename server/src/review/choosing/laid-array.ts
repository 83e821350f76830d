import type { Field } from '../../records/field.ts'
import type { ArrayEntry, ResolvedArray, ResolvedSystem, Surface } from '../resolved.ts'
import type { Candidate, ControllerChoice } from './row.ts'

/** Where a comparison takes place: a surface, and the array whose controller and cable its panels would use. */
export interface Target {
  readonly system: ResolvedSystem
  readonly surface: Surface
  readonly array?: ResolvedArray
}

/** The place's array with only these panels in it. */
export function laidArray(
  { surface, array }: Target,
  { id, panel }: Candidate,
  [series, parallel]: readonly [number, number],
  choice: ControllerChoice | undefined,
): ResolvedArray {
  const entry: ArrayEntry = {
    ...(array?.entry ?? bare),
    panels: [
      {
        panel: { id: typed(id) },
        count: typed(series * parallel),
        ...(surface.id && { surface: surface.id }),
      },
    ],
    wiring: { in_series: typed(series), in_parallel: typed(parallel) },
  }
  const panels = [{ entry: entry.panels[0]!, panel, surface }]
  return { entry, panels, ...(choice && { controller: choice.controller }) }
}

/** The system with the new array in place of all that lies on the surface now. */
export function systemWith(target: Target, laid: ResolvedArray): ResolvedSystem {
  const { system } = target
  return { ...system, arrays: [...arraysBeside(target), laid] }
}

/** The arrays that stay, without what lies on the surface now. */
export const arraysBeside = ({ system, surface, array }: Target): readonly ResolvedArray[] =>
  system.arrays.flatMap((one) => {
    const panels = one.panels.filter((other) => other.surface !== surface)
    const isGone = one === array || panels.length < Math.min(1, one.panels.length)
    return isGone ? [] : [{ ...one, panels }]
  })

const bare: ArrayEntry = { panels: [], wiring: {}, controller: {}, cable: {}, disconnect: {}, output: { cable: {} } }

/** A field that nobody typed. */
const typed = <T extends number | string>(value: T): Field<T> => ({
  pointer: '',
  text: String(value),
  value,
  span: { start: 0, end: 0 },
})
