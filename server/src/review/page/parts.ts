import type { Measure } from '../../records/field.ts'
import type { Price } from '../figures.ts'
import { countOf } from '../strings.ts'
import type { ResolvedSystem } from '../resolved.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** A line of the parts list: `each` weighs and costs what its record says, frames included. */
export interface Part {
  readonly name: string
  readonly count: number
  readonly weight_kg: number | null
  readonly price: Price | null
  readonly from: string | null
  readonly quoted_on: string | null
}

export interface PartsList {
  readonly parts: readonly Part[]
  /** Null where one is not known, or in several currencies. */
  readonly weight_kg: number | null
  readonly price: Price | null
}

interface Sold {
  readonly name?: { readonly text: string }
  readonly weight?: Measure
  readonly mounting_frame?: { readonly weight?: Measure }
  readonly price: {
    readonly amount?: Measure
    readonly quoted_on?: { readonly text: string }
    readonly from?: { readonly text: string }
  }
}

/** Panels, controllers and batteries; equal ones come together. */
export function partsOf({ arrays, battery, system }: ResolvedSystem, bundle?: Bundle): PartsList {
  const say = sayIn(bundle)
  const bank = (system.battery.in_series?.value ?? 1) * (system.battery.in_parallel?.value ?? 1)
  const wanted: readonly (readonly [Sold | undefined, string, number])[] = [
    ...arrays.flatMap(({ panels }) =>
      panels.map((p) => [p.panel?.record, p.entry.panel.id?.text ?? say`panel`, countOf(p)] as const),
    ),
    ...arrays
      .filter(({ shares }) => !shares)
      .map(({ controller, entry }) => [controller?.record, entry.controller.id?.text ?? say`controller`, 1] as const),
    [battery?.record, system.battery.battery.id?.text ?? say`battery`, bank],
  ]
  const known = new Map<Sold | string, Part>()
  for (const [record, id, count] of wanted) {
    const before = known.get(record ?? id)
    known.set(record ?? id, before ? { ...before, count: before.count + count } : part(record, id, count))
  }
  const parts = [...known.values()]
  return { parts, weight_kg: sumOf(parts, ({ weight_kg: kg }) => kg), price: priceOf(parts) }
}

function part(record: Sold | undefined, id: string, count: number): Part {
  const { weight, mounting_frame: frame, price } = record ?? {}
  return {
    name: record?.name?.text ?? id,
    count,
    weight_kg: weight ? weight.value + (frame?.weight?.value ?? 0) : null,
    price: price?.amount ? { amount: price.amount.value, currency: price.amount.quantity.unit } : null,
    from: price?.from?.text ?? null,
    quoted_on: price?.quoted_on?.text ?? null,
  }
}

function priceOf(parts: readonly Part[]): Price | null {
  const currencies = new Set(parts.map(({ price }) => price?.currency))
  const [currency] = currencies
  const amount = sumOf(parts, ({ price }) => price?.amount ?? null)
  return currencies.size === 1 && currency !== undefined && amount !== null ? { amount, currency } : null
}

const sumOf = (parts: readonly Part[], of: (part: Part) => number | null): number | null =>
  parts.reduce<number | null>((sum, one) => {
    const each = of(one)
    return sum === null || each === null ? null : sum + one.count * each
  }, 0)
