import { named, phrase } from '../wording/phrase.ts'
import { toBase } from './convert.ts'
import { findUnit } from './units.ts'
import type { Draft, Note, Task } from './draft.ts'
import { guess, problem, replaced } from './draft.ts'
import { kinds } from './kinds.ts'
import type { Scanned } from './number.ts'
import type { Quantity, QuantityKind } from './quantity.ts'
import type { UnitFound } from './unit-text.ts'
import { unitOfKind } from './unit-text.ts'

/** The unit of a bare number, or the commonest one of the kind. */
export function usualUnit({ kind, options }: Task): string {
  return options.unit ?? (kind === 'money' ? options.currency : undefined) ?? kinds[kind].units[0]!
}

/** Half a printed unit in the base unit: a difference, so offsets of temperature scales do not count. */
export function halfInBase(half: number, unit: string): number {
  const { factor, divisor } = findUnit(unit) ?? { factor: 1, divisor: 1 }
  return (half * factor) / divisor
}

export const measure = (
  { kind }: Task,
  notes: readonly Note[],
  number: Scanned,
  unit: UnitFound,
  unitDefaulted: boolean,
): Draft => ({ quantity: quantityOf(kind, number, unit, unitDefaulted), notes })

/** A number in a unit. */
export function quantityOf(
  kind: QuantityKind,
  number: Pick<Scanned, 'value' | 'half'>,
  { symbol, dimension }: UnitFound,
  unitDefaulted: boolean,
): Quantity {
  const value = dimension === 'money' ? number.value : toBase(number.value, symbol)
  return { kind, dimension, value, unit: symbol, unitDefaulted, half: halfInBase(number.half, symbol) }
}

/** The unit that the schema, the library or the kind gives a number without one. A share below 1 is a fraction, whatever they say. */
export function defaultUnit({ kind, options }: Task, value: number): UnitFound | null {
  if (kind === 'ratio' && 0 < Math.abs(value) && Math.abs(value) < 1) return unitOfKind('1', kind)
  const named = options.unit ?? (kind === 'money' ? options.currency : undefined)
  if (named !== undefined) return unitOfKind(named, kind)
  return kind === 'ratio' && Math.abs(value) <= 1 ? unitOfKind('1', kind) : null
}

export function bare(task: Task, notes: readonly Note[], number: Scanned): Draft {
  const unit = defaultUnit(task, number.value)
  if (number.plain.includes('/') && metric.has(unit?.symbol ?? ''))
    return missingUnit(task, number.end, inches[task.kind])
  if (unit) return measure(task, notes, number, unit, true)
  return missingUnit(task, number.end)
}

/** Nobody prints a fraction of a millimetre: `46 7/8` is in inches, whatever the schema's default. */
const metric = new Set(['mm', 'cm', 'm', 'kg', 'g'])
export const inches: Partial<Record<QuantityKind, string[]>> = { length: ['in', 'ft'], mass: ['lb', 'oz'] }

/** A number that ends at `end` has no unit, and the schema names none. */
export function missingUnit(task: Task, end: number, units = kinds[task.kind].units.slice(0, 4)): Draft {
  const { text, typed } = task.plain
  const message = phrase`"${typed.trim()}" has no unit; ${named(kinds[task.kind].name)} is expected, such as ${kinds[task.kind].example}`
  return problem(task, 'missing-unit', text.length - text.trimStart().length, end, message, () =>
    units.map((unit) => guess(replaced(task, end, end, ` ${unit}`), phrase`in ${inWords[unit] ?? unit}`)),
  )
}

/** Units whose sign would read as another word, or as none. */
const inWords: Readonly<Record<string, string>> = { in: 'inches', ft: 'feet', h: 'hours', A: 'amperes' }
