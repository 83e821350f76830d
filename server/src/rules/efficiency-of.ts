import type { Panel } from '../records/records.generated.ts'

/** Efficiency over the whole outline, as a share; undefined where a number for it is missing. */
export function efficiencyOf({ stc: { pmax }, size: { length, width } }: Panel): number | undefined {
  if (!pmax || !length || !width || length.value <= 0 || width.value <= 0) return undefined
  return pmax.value / (1000 * length.value * width.value)
}
