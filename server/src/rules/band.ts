import type { Panel } from '../records/records.generated.ts'

/** Whether a value lies in a closed band. */
export const inside = (value: number, [low, high]: readonly [number, number]): boolean => low <= value && value <= high

/** A number for a message: three digits, no exponent. */
export const short = (value: number): string => String(Number(value.toPrecision(3)))

type Construction = NonNullable<Panel['construction']>['value']

/** What is usual for panels of a construction; where none is given, for any panel. */
export function usualFor(
  bands: Readonly<Record<Construction, readonly [number, number]>>,
  { construction }: Pick<Panel, 'construction'>,
): { low: number; high: number; panel: string } {
  const kind = construction?.value
  const some = kind ? [bands[kind]] : Object.values(bands)
  const [low, high] = [Math.min(...some.map(([least]) => least)), Math.max(...some.map(([, most]) => most))]
  return { low, high, panel: kind ? `a ${kind} panel` : 'a panel' }
}
