import { costOf } from './cost.ts'
import type { Figures, Price } from './figures.ts'
import { countOf } from './strings.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

/** What a system is made of, and how much of it there is; null where something is not known. */
export interface Totals {
  readonly pmax_stc_w: number | null
  /** Of panels with their frames. */
  readonly weight_kg: number | null
  /** Of all parts whose price is known. */
  readonly price: Price | null
  readonly parts_without_price: number
  readonly arrays: readonly ArrayParts[]
  readonly battery: { readonly name: string | null; readonly count: number; readonly wiring: string } | null
}

export interface ArrayParts {
  readonly id: string
  readonly panels: readonly { readonly name: string; readonly count: number }[]
  /** Such as 2S1P. */
  readonly wiring: string | null
  readonly controller: string | null
  /** The array whose controller it is joined to. */
  readonly shares_controller_with: string | null
}

export function totalsOf(system: ResolvedSystem, { arrays }: Pick<Figures, 'arrays'>): Totals {
  const sum = (of: (array: Figures['arrays'][number]) => number | null) =>
    arrays.reduce<number | null>((all, array) => {
      const one = of(array)
      return all === null || one === null ? null : all + one
    }, 0)
  const { battery } = system
  const { in_series: series, in_parallel: parallel } = system.system.battery
  const [s, p] = [series?.value ?? 1, parallel?.value ?? 1]
  const currency =
    arrays.find(({ price }) => price)?.price?.currency ?? battery?.record.price.amount?.quantity.unit ?? null
  const cost = currency === null ? null : costOf(system, currency)
  return {
    pmax_stc_w: sum((a) => a.pmax_stc_w),
    weight_kg: sum((a) => a.weight_kg),
    price: cost && currency !== null ? { amount: cost.amount, currency } : null,
    parts_without_price: cost?.missing.length ?? 0,
    arrays: system.arrays.map((array, i) => partsOf(array, arrays[i]!.id)),
    battery: battery ? { name: battery.record.name?.text ?? null, count: s * p, wiring: `${s}S${p}P` } : null,
  }
}

function partsOf({ panels, entry, controller, shares }: ResolvedArray, id: string): ArrayParts {
  const { in_series: series, in_parallel: parallel } = entry.wiring
  return {
    id,
    panels: panels.map((one) => ({
      name: one.panel?.record.name?.text ?? one.entry.panel.id?.text ?? 'a panel',
      count: countOf(one),
    })),
    wiring: series && parallel ? `${series.value}S${parallel.value}P` : null,
    controller: controller?.record.name?.text ?? entry.controller.id?.text ?? null,
    shares_controller_with: shares ? (entry.shares_controller_with?.text ?? null) : null,
  }
}
