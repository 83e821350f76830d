import type { Conditions } from '../../physics/translation/point.ts'
import type { Accuracy } from './accuracy.ts'
import { stringExpected } from './panel-expected.ts'
import { isOff, type MeasuredString, type Quantity, type Reading } from './string.ts'

/** Strings are compared as they would be in the same sun, so that unlike ones can be, too. */
const anywhere: Conditions = { irradiance: 800, temperature: 45 }

/**
 * Adds to each value how far it is from those of the other strings of the same measurement. One meter and one sun serve all of
 * them, so that this shows smaller differences than the records do. What is mistyped serves for no comparison.
 *
 * @source IEC 62446-1, comparison of strings (from memory)
 */
export function compareStrings(
  strings: readonly MeasuredString[],
  mistyped: ReadonlySet<MeasuredString['entry']>,
  accuracy: Accuracy,
): readonly MeasuredString[] {
  const shares = strings.map((string) => sharesOf(string))
  return strings.map((string, i) => {
    const readings = [...string.readings].map(([quantity, reading]): [Quantity, Reading] => {
      const own = shares[i]!.get(quantity)
      const others = strings.flatMap((other, k) =>
        k !== i &&
        !mistyped.has(other.entry) &&
        (isVoltage(quantity) || sameLight(string, other)) &&
        isAsGood(other, reading)
          ? (shares[k]!.get(quantity) ?? [])
          : [],
      )
      if (own === undefined || others.length === 0) return [quantity, reading]
      const meter = isVoltage(quantity) ? accuracy.voltage : accuracy.current
      const apart = {
        share: own / median(others) - 1,
        uncertainty: meter * Math.sqrt(1 + 1 / others.length),
      }
      return [quantity, { ...reading, apart }]
    })
    return { ...string, readings: new Map(readings) }
  })
}

/** Whether another string serves to doubt a value: not where by the records that one is wrong and this one right. */
function isAsGood({ readings, limit }: MeasuredString, { quantity, off }: Reading): boolean {
  const other = readings.get(quantity)?.off
  return !other || !off || !isOff(other, limit) || isOff(off, limit)
}

const isVoltage = (quantity: Quantity) => quantity === 'voc' || quantity === 'vmp'

/** On the same surfaces, none of which is bent: there the halves of a string see different sun. */
function sameLight(a: MeasuredString, b: MeasuredString): boolean {
  const surfaces = (string: MeasuredString) => new Set(string.panels.map(({ surface }) => surface))
  const [one, other] = [surfaces(a), surfaces(b)]
  return one.size === other.size && [...one].every((surface) => other.has(surface))
}

/** Each value over what the records expect anywhere; where they say too little, over the same for all. */
function sharesOf({ panels, readings }: MeasuredString): ReadonlyMap<Quantity, number> {
  const records = panels.map(({ panel }) => panel?.record)
  const expected = stringExpected(records, anywhere)
  const positive = [...readings.values()].filter(({ value }) => value > 0)
  return new Map(
    positive.flatMap(({ quantity, value }): [Quantity, number][] => {
      const by = expected[quantity] ?? rated(records, quantity)
      return by ? [[quantity, value / by]] : []
    }),
  )
}

function rated(
  records: readonly ({ stc: Partial<Record<Quantity, { value: number }>> } | undefined)[],
  quantity: Quantity,
) {
  const values = records.map((record) => record?.stc[quantity]?.value)
  if (values.includes(undefined)) return null
  const known = values as number[]
  return isVoltage(quantity) ? known.reduce((sum, value) => sum + value, 0) : Math.min(...known)
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}
