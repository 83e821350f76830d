import type { Said } from '../findings/message.ts'
import type { Panel } from '../records/records.generated.ts'
import { word } from './words.ts'

/** Whether a value lies in a closed band. */
export const inside = (value: number, [low, high]: readonly [number, number]): boolean => low <= value && value <= high

type Construction = NonNullable<Panel['construction']>['value']

/** What is usual for panels of a construction; where none is given, for any panel. */
export function usualFor(
  bands: Readonly<Record<Construction, readonly [number, number]>>,
  { construction }: Pick<Panel, 'construction'>,
): { low: number; high: number; panel: Said } {
  const kind = construction?.value
  const some = kind ? [bands[kind]] : Object.values(bands)
  const [low, high] = [Math.min(...some.map(([least]) => least)), Math.max(...some.map(([, most]) => most))]
  return { low, high, panel: kind ? word({ say: 'panelOfKind', with: { kind } }) : word({ say: 'panel' }) }
}
