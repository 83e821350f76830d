import type { Measure } from '../records/field.ts'
import { countOf } from './strings.ts'
import type { ResolvedSystem } from './resolved.ts'

export interface Cost {
  /** In the wanted currency. */
  readonly amount: number
  /** Names of what has no price in it. */
  readonly missing: readonly string[]
}

/** What panels, controllers and batteries cost together. */
export function costOf({ arrays, battery, system }: ResolvedSystem, currency: string): Cost {
  const bank = (system.battery.in_series?.value ?? 1) * (system.battery.in_parallel?.value ?? 1)
  const parts = [
    ...arrays.flatMap(({ entry, panels }) =>
      panels.length === 0
        ? [unknown(entry.id?.text ?? 'an array')]
        : panels.map((p) =>
            p.panel ? part('a panel', p.panel.record, countOf(p)) : unknown(p.entry.panel.id?.text ?? 'a panel'),
          ),
    ),
    ...arrays.flatMap(({ controller, entry, shares }) =>
      shares ? [] : used('a controller', controller, entry.controller, 1),
    ),
    ...used('the battery', battery, system.battery.battery, bank),
  ]
  const priced = parts.filter(({ price }) => price?.quantity.unit === currency)
  return {
    amount: priced.reduce((sum, { price, count }) => sum + (price?.value ?? 0) * count, 0),
    missing: parts.filter((one) => !priced.includes(one)).map(({ name }) => name),
  }
}

interface Priced {
  readonly name?: { readonly text: string }
  readonly price: { readonly amount?: Measure }
}

/** Nothing where none is named. */
const used = (
  kind: string,
  found: { readonly record: Priced } | undefined,
  { id }: { readonly id?: { readonly text: string } },
  count: number,
) => (found ? [part(kind, found.record, count)] : id ? [unknown(id.text)] : [])

/** What is named and not found, or cannot be read. */
const unknown = (name: string) => part(name, { price: {} }, 0)

const part = (kind: string, { name, price }: Priced, count: number) => ({
  name: name?.text ?? kind,
  price: price.amount,
  count,
})
