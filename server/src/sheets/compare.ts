import type { Measure } from '../records/field.ts'
import { readQuantity } from '../quantities/read.ts'
import type { Quantity, QuantityKind } from '../quantities/quantity.ts'
import { findUnit } from '../quantities/units.ts'
import type { Reading } from './sheet.ts'

/**
 * Whether a typed quantity is what the sheet prints. Fewer digits than printed, another unit and a sign that the sheet
 * leaves out are the same; a second printed unit is compared where it is the one that was typed.
 *
 * @returns  the text to type instead, in the typed unit where the sheet prints it; null for the same value, undefined
 *           where the two cannot be compared
 */
export function otherText(
  { quantity, pointer }: Measure,
  { typed, also }: Reading,
  rating?: number,
): string | null | undefined {
  const all = [typed, ...also].flatMap((text) => {
    const printed = quantityOf(text, quantity.kind)
    return printed ? [{ text, printed }] : []
  })
  const own = all.filter(
    ({ printed }) => unitSize(printed) === unitSize(quantity) && printed.dimension === quantity.dimension,
  )
  const usable = own.length ? own : all
  if (usable.length === 0) return undefined
  if (usable.some(({ printed }) => isSame(quantity, printed, pointer, own.length > 0, rating))) return null
  return usable[0]!.text
}

export const quantityOf = (text: string, kind: QuantityKind): Quantity | undefined => readQuantity(text, kind).quantity

const unitSize = ({ unit }: Quantity): number => {
  const known = findUnit(unit)
  return known ? known.factor / known.divisor : 1
}

function isSame(a: Quantity, b: Quantity, pointer: string, oneUnit: boolean, rating: number | undefined): boolean {
  if (a.dimension !== b.dimension) {
    const [x, y] = [relative(a, rating), relative(b, rating)]
    return x !== undefined && y !== undefined && Math.abs(x - y) <= 0.1 * Math.abs(y) + 1e-5
  }
  const near = (x: number, y: number) =>
    Math.abs(x - y) <=
    (oneUnit ? (a.half > b.half * 1.001 ? a.half : 0) : a.half + b.half) + 1e-9 * Math.max(1, Math.abs(y))
  if (a.upper !== undefined || b.upper !== undefined)
    return near(a.value, b.value) && near(a.upper ?? a.value, b.upper ?? b.value)
  // some sheets leave the minus of a coefficient out
  const unsigned = /coefficients\/(?:pmax|voc|vmp)$/.test(pointer) && b.value > 0 && a.value < 0
  return near(a.value, unsigned ? -b.value : b.value)
}

/** A coefficient as a share per kelvin. */
function relative({ value, dimension }: Quantity, rating: number | undefined): number | undefined {
  if (dimension === 'per-kelvin') return value
  return rating && /-per-kelvin$/.test(dimension) ? value / rating : undefined
}
