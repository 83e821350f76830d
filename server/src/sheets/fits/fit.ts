import type { Concept } from '../../records/concepts.ts'
import type { Printed } from '../numbers.ts'
import type { Cell } from '../tables.ts'

/** What a cell would say if it were the value of a field. */
export interface Fit {
  readonly field: string
  /** As a careful person types it; another printed unit or limit is as good. */
  readonly typed: string
  readonly also: readonly string[]
  /** A plain number in the first printed unit. */
  readonly value: number
  /** How plainly the label says so: 3 names it, 0 says nothing, below 0 names something else. */
  readonly named: number
}

/** A printed cell, what its words say, and its numbers. */
export interface Asked {
  readonly cell: Cell
  readonly words: string
  readonly says: ReadonlySet<Concept>
  readonly heading: ReadonlySet<Concept>
  readonly hint: string | null
  readonly numbers: readonly Printed[]
}

export const has = (says: ReadonlySet<Concept>, ...concepts: Concept[]) => concepts.some((c) => says.has(c))

/** Single numbers of a unit: the number itself or, where none is printed behind it, in the unit of the label. */
export function singles({ numbers, hint }: Asked, units: readonly string[]): readonly Printed[] {
  const main = numbers.filter((n) => n.join !== 'spread')
  if (main.some((n) => n.join === 'range' || n.join === 'by')) return []
  const own = main.filter((n) => n.unit !== null && units.includes(n.unit))
  if (own.length) return own
  const [first, second] = main
  return first && !second && first.unit === null && hint !== null && units.includes(hint)
    ? [{ ...first, unit: hint }]
    : []
}

export const text = ({ number, unit }: Printed) => `${number} ${unit}`.trim()

export function fit(
  field: string,
  numbers: readonly Printed[],
  named: number,
  typed = numbers.map(text),
): readonly Fit[] {
  const [first, ...also] = typed
  return first === undefined ? [] : [{ field, typed: first, also, value: numbers[0]!.value, named }]
}
