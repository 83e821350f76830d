import type { Value } from './value.ts'

/** A derived value that a change moves; null on the side where it is not known, or its record not there. */
export interface Change {
  readonly id: string
  readonly label: string
  readonly unit: string
  readonly before: Side
  readonly now: Side
}

interface Side {
  readonly value: number | null
  readonly text: string | null
}

/** The derived values of a record that differ from those it had before. */
export function changesOf(before: readonly Value[], now: readonly Value[]): readonly Change[] {
  const was = new Map(before.map((value) => [value.id, value]))
  const is = new Map(now.map((value) => [value.id, value]))
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((id) => {
    const [one, other] = [was.get(id), is.get(id)]
    const { label, unit } = (other ?? one)!
    return isSame(one, other) ? [] : [{ id, label, unit, before: side(one), now: side(other) }]
  })
}

/** What is printed alike is the same: the last bits of a simulation are nobody's change. */
const isSame = (a: Value | undefined, b: Value | undefined) =>
  (a?.value ?? null) === (b?.value ?? null) || (a !== undefined && b !== undefined && a.text === b.text)

const side = (value: Value | undefined): Side =>
  value && value.value !== null ? { value: value.value, text: value.text } : { value: null, text: null }

/** By how many percent a value grew; empty where that cannot be said. */
export function shareOf({ before, now }: Change): string {
  if (before.value === null || now.value === null || before.value === 0) return ''
  const percent = 100 * (now.value / before.value - 1)
  return `${percent < 0 ? '' : '+'}${percent.toFixed(1)} %`
}
