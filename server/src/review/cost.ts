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
    ...arrays.flatMap(({ panels }) =>
      panels.flatMap((p) => (p.panel ? [part('a panel', p.panel.record, countOf(p))] : [])),
    ),
    ...arrays.flatMap(({ controller, shares }) =>
      controller && !shares ? [part('a controller', controller.record, 1)] : [],
    ),
    ...(battery ? [part('the battery', battery.record, bank)] : []),
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

const part = (kind: string, { name, price }: Priced, count: number) => ({
  name: name?.text ?? kind,
  price: price.amount,
  count,
})
