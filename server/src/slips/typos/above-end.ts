import type { Frame } from '../density/coherence.ts'
import { index } from '../evidence.ts'

/** Where the curve of a panel ends: no voltage and no current at full power is above it. */
const ends: Readonly<Record<number, number>> = { [index.vmp]: index.voc, [index.imp]: index.isc }

/** It is above the end of the curve, so that it is wrong itself or stands in the place of the end. */
export function isAboveEnd(field: number, { values, present }: Frame): boolean {
  const end = ends[field]
  return end !== undefined && present[end]! && values[field]! > values[end]!
}
