import type { ResolvedSystem } from '../resolved.ts'
import type { Cause } from './causes.ts'
import { measuredOf } from './measured.ts'
import { nameOf, powerExpected, type MeasuredString, type Quantity } from './string.ts'

/** What was measured on one string, as the review prints it; null where it was not measured, or is not known. */
export interface MeasurementFigures {
  readonly date: string
  readonly array: string
  /** From 1. */
  readonly string: number
  readonly expected: Values
  readonly measured: Values
  /** What is likeliest to have made it give less; null where nothing is, or where it cannot be distinguished. */
  readonly cause: Cause | null
  /** Of the comparison with the records at 95 % confidence, of the least certain value that was compared [%]. */
  readonly uncertainty_pct: number | null
}

interface Values {
  readonly voc_v: number | null
  readonly isc_a: number | null
  readonly pmax_w: number | null
}

export function measurementFigures(system: ResolvedSystem): readonly MeasurementFigures[] {
  return measuredOf(system).strings.map(({ string, diagnosis }) => {
    const { measurement, array, number, expected, readings, power } = string
    const value = (quantity: Quantity) => readings.get(quantity)?.value ?? null
    return {
      date: measurement.entry.date?.value ?? '',
      array: nameOf(array),
      string: number,
      expected: { voc_v: expected.voc, isc_a: expected.isc, pmax_w: powerExpected(expected) },
      measured: { voc_v: value('voc'), isc_a: value('isc'), pmax_w: power?.value ?? null },
      cause: diagnosis?.cause ?? null,
      uncertainty_pct: uncertaintyOf(string),
    }
  })
}

function uncertaintyOf({ readings, power }: MeasuredString): number | null {
  const all = [...readings.values(), ...(power ? [power] : [])].flatMap(({ off }) => off?.uncertainty ?? [])
  return all.length > 0 ? 100 * Math.max(...all) : null
}
