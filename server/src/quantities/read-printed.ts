import { kinds } from './kinds.ts'
import { quantityOf } from './measure.ts'
import type { Quantity, QuantityKind } from './quantity.ts'
import { findUnit, type Unit } from './units.ts'

/** `18.6 V`, `-0.36 %/°C`: one number and a usual unit, with nothing that could be read in another way. */
const printed = /^(-?(?:0|[1-9]\d{0,5})(?:\.(\d{1,6}))?) (\S+)$/

/** Pairs, currencies and wire gauges have readers of their own. */
const others: ReadonlySet<QuantityKind> = new Set<QuantityKind>(['money', 'tolerance', 'temperature-range', 'area'])

/**
 * A quantity in the form that most are typed in, at a fraction of the time that `readQuantity` takes for all forms.
 *
 * @returns null for any other text
 */
export function readPrinted(text: string, kind: QuantityKind): Quantity | null {
  const [, number, decimals = '', symbol = ''] = (!others.has(kind) && printed.exec(text)) || []
  const unit = number === undefined ? undefined : unitsOf(kind).get(symbol)
  return unit ? quantityOf(kind, { value: Number(number), half: 0.5 * 10 ** -decimals.length }, unit, false) : null
}

const known = new Map<QuantityKind, ReadonlyMap<string, Unit>>()

/** The usual units of a kind by what is typed. */
function unitsOf(kind: QuantityKind): ReadonlyMap<string, Unit> {
  const units = known.get(kind) ?? new Map(kinds[kind].units.flatMap((symbol) => withUnit(symbol)))
  known.set(kind, units)
  return units
}

function withUnit(symbol: string): readonly (readonly [string, Unit])[] {
  const unit = findUnit(symbol)
  return unit ? [[symbol, unit]] : []
}
