import { onceEach } from '../records/once-each.ts'
import { powerHot, siteAt, vmpHot, vocAt, vocHot } from './panel-at.ts'
import type { ResolvedArray, ResolvedPanels, ResolvedSystem } from './resolved.ts'

/** The panels of each string in the order in which they are listed: string after string. */
export const stringsOf = onceEach((array: ResolvedArray): readonly (readonly ResolvedPanels[])[] => {
  const all = array.panels.flatMap((panels) => Array.from({ length: countOf(panels) }, () => panels))
  const { in_series: series } = array.entry.wiring
  const length = Math.max(1, series?.value ?? 1)
  return Array.from({ length: Math.ceil(all.length / length) }, (_, i) => all.slice(i * length, (i + 1) * length))
})

/** The strings as long as the first: where the panels do not add up the last is not one that anybody would wire. */
export function wholeStrings(array: ResolvedArray): readonly (readonly ResolvedPanels[])[] {
  const strings = stringsOf(array)
  return strings.filter((string) => string.length === strings[0]!.length)
}

/** Whether all panels of an array are of one kind. */
export const isUniform = (array: ResolvedArray): boolean =>
  array.panels.every(({ panel }) => panel && panel.record === array.panels[0]?.panel?.record)

export const countOf = (panels: ResolvedPanels): number => Math.min(Math.max(0, panels.entry.count?.value ?? 0), 10_000)

/** Sum over a string or an array; null where one part is not known. */
export function sum<T>(parts: readonly T[], of: (part: T) => number | null | undefined): number | null {
  let total = 0
  for (const part of parts) {
    const value = of(part)
    if (value === null || value === undefined) return null
    total += value
  }
  return parts.length > 0 ? total : null
}

/** Open-circuit voltage of the highest string at an air temperature [V]. */
export function stringVoc(array: ResolvedArray, air: number): number | null {
  return extreme(Math.max, array, (p) => p.panel && vocAt(p.panel.record, air)?.value)
}

/** Voltage at maximum power of the lowest string on a hot day [V]. */
export function stringVmpHot(system: ResolvedSystem, array: ResolvedArray): number | null {
  return extreme(Math.min, array, (p) => p.panel && vmpHot(p.panel.record, siteAt(system, p)))
}

/** Open-circuit voltage of the lowest string on a hot day [V], by the sheet's coefficient. */
export function stringVocHot(system: ResolvedSystem, array: ResolvedArray): number | null {
  return extreme(Math.min, array, (p) => p.panel && vocHot(p.panel.record, siteAt(system, p)))
}

/** Short-circuit current of all strings together, each with that of its strongest panel [A]. */
export function arrayIsc(array: ResolvedArray): number | null {
  return sum(stringsOf(array), (string) => strongest(string))
}

/** The same of the one string that carries most. */
export function stringIsc(array: ResolvedArray): number | null {
  const each = stringsOf(array).map(strongest)
  return each.includes(null) || each.length === 0 ? null : Math.max(...(each as number[]))
}

export const arrayPmax = (array: ResolvedArray): number | null =>
  sum(array.panels, (p) => times(p, p.panel?.record.stc.pmax?.value))

export const arrayPmaxHot = (system: ResolvedSystem, array: ResolvedArray): number | null =>
  sum(array.panels, (p) => times(p, p.panel && powerHot(p.panel.record, siteAt(system, p))))

/** Panels and their frames [kg]. */
export const arrayWeight = (array: ResolvedArray): number | null => sum(array.panels, weightOf)

function weightOf(panels: ResolvedPanels): number | null {
  const { weight, mounting_frame: frame } = panels.panel?.record ?? {}
  return times(panels, weight && weight.value + (frame?.weight?.value ?? 0))
}

/** Of all panels whose weight is known, with their frames [kg]. */
export const knownWeight = (arrays: readonly ResolvedArray[]): number =>
  arrays.flatMap(({ panels }) => panels).reduce((all, panels) => all + (weightOf(panels) ?? 0), 0)

const times = (panels: ResolvedPanels, each: number | null | undefined) =>
  each === null || each === undefined ? null : each * countOf(panels)

function strongest(string: readonly ResolvedPanels[]): number | null {
  const each = string.map(({ panel }) => panel?.record.stc.isc?.value)
  return each.includes(undefined) || each.length === 0 ? null : Math.max(...(each as number[]))
}

function extreme(
  pick: (...values: number[]) => number,
  array: ResolvedArray,
  of: (panels: ResolvedPanels) => number | null | undefined,
): number | null {
  const known = new Map<ResolvedPanels, number | null | undefined>(array.panels.map((p) => [p, of(p)]))
  const each = wholeStrings(array).map((string) => sum(string, (p) => known.get(p)))
  return each.includes(null) || each.length === 0 ? null : pick(...(each as number[]))
}
