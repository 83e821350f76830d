import { designCurrent } from '../physics/fuses.ts'
import { cableFigures, onRoof, type CableFigures } from './cable-figures.ts'
import type { ArrayFigures, Price } from './figures.ts'
import {
  arrayIsc,
  arrayPmax,
  arrayPmaxHot,
  arrayWeight,
  countOf,
  stringsOf,
  stringVmpHot,
  stringVoc,
  sum,
} from './strings.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

export function arrayFigures(system: ResolvedSystem, array: ResolvedArray, index: number): ArrayFigures {
  const isc = arrayIsc(array)
  return {
    id: array.entry.id?.value ?? String(index + 1),
    pmax_stc_w: arrayPmax(array),
    pmax_hot_w: arrayPmaxHot(system, array),
    voc_cold_v: stringVoc(array, system.coldest.value),
    vmp_hot_v: stringVmpHot(system, array),
    isc_design_a: isc === null ? null : designCurrent(isc),
    weight_kg: arrayWeight(array),
    price: total(array.panels.map((p) => ({ amount: p.panel?.record.price.amount, count: countOf(p) }))),
    cable: arrayCable(system, array),
  }
}

/** The array's cable at the current of full power and the voltage of a hot day, when the same drop is the largest share. */
export function arrayCable(system: ResolvedSystem, array: ResolvedArray): CableFigures | null {
  const strings = stringsOf(array)
  const current = sum(strings, (string) => least(string.map(({ panel }) => panel?.record.stc.imp?.value)))
  const voltages = strings.map((string) => sum(string, ({ panel }) => panel?.record.stc.vmp?.value))
  return cableFigures(system, array.entry.cable, onRoof, current, stringVmpHot(system, array) ?? least(voltages))
}

/** Sum of prices; null where one is missing or in another currency. */
export function total(
  parts: readonly {
    readonly amount: { readonly value: number; readonly quantity: { readonly unit: string } } | undefined
    readonly count: number
  }[],
): Price | null {
  const currency = parts[0]?.amount?.quantity.unit
  if (!currency || parts.some(({ amount }) => amount?.quantity.unit !== currency)) return null
  return { amount: parts.reduce((all, { amount, count }) => all + (amount?.value ?? 0) * count, 0), currency }
}

const least = (values: readonly (number | null | undefined)[]): number | null =>
  values.length === 0 || values.some((v) => v === null || v === undefined) ? null : Math.min(...(values as number[]))
