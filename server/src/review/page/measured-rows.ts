import { nameOf } from '../measured/in-words.ts'
import { measuredOf } from '../measured/measured.ts'
import { powerExpected, quantities, type Quantity } from '../measured/string.ts'
import { verdictOf } from '../measured/verdict.ts'
import type { ResolvedSystem } from '../resolved.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** One string of one measurement for the page; null where it was not measured or is not known. */
export interface MeasuredRow {
  readonly date: string
  readonly array: string
  readonly string: number
  readonly voc: Pair
  readonly isc: Pair
  /** Vmp x Imp. */
  readonly power: Pair
  /** What is thought of it: `in order`, or each value that is not with its cause. */
  readonly verdict: string
  /** Of the least certain comparison [1]. */
  readonly uncertainty: number | null
  /** Difference that is no finding [1]. */
  readonly limit: number
}

export interface Pair {
  readonly expected: number | null
  readonly measured: number | null
}

export function measuredRows(system: ResolvedSystem, bundle?: Bundle): readonly MeasuredRow[] {
  const inOrder = sayIn(bundle)`in order`
  return measuredOf(system).strings.map((one) => {
    const { measurement, array, number, expected, readings, power, limit } = one.string
    const pair = (quantity: Quantity): Pair => ({
      expected: expected[quantity],
      measured: readings.get(quantity)?.value ?? null,
    })
    const wrong = quantities.flatMap((quantity) => {
      const reading = readings.get(quantity)
      const verdict = reading && verdictOf(one, reading, bundle)
      return verdict && verdict !== inOrder ? [`${reading.field.text} ${verdict}`] : []
    })
    const uncertain = [...readings.values(), ...(power ? [power] : [])].flatMap(({ off }) => off?.uncertainty ?? [])
    return {
      date: measurement.entry.date?.text ?? '',
      array: nameOf(array, bundle),
      string: number,
      voc: pair('voc'),
      isc: pair('isc'),
      power: { expected: powerExpected(expected), measured: power?.value ?? null },
      verdict: wrong.length > 0 ? wrong.join(', ') : inOrder,
      uncertainty: uncertain.length > 0 ? Math.max(...uncertain) : null,
      limit,
    }
  })
}
