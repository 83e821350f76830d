import type { Bank } from './bank.ts'
import { mismatchOfStrings, type Strings } from './mismatch.ts'
import { vmpHot, siteAt, vocAt } from './panel-at.ts'
import { voltageNeeded } from './rewire.ts'
import { facingOf } from './sun.ts'
import { countOf, sum } from './strings.ts'
import type { ResolvedArray, ResolvedPanels, ResolvedSystem } from './resolved.ts'

/** A wiring of the same panels that loses less. */
export interface Better {
  readonly series: number
  readonly parallel: number
  /** In the order in which they are to be wired, string after string. */
  readonly order: readonly ResolvedPanels[]
  readonly isOrderOther: boolean
  /** Share of the year's energy that it loses [1]. */
  readonly loss: number
}

/**
 * The wiring that loses least: the panels as listed or like beside like, in strings of any length that keeps the voltage limits.
 *
 * @returns null where none is better than the one listed by more than half a per cent
 */
export function bestWiring(
  system: ResolvedSystem,
  array: ResolvedArray,
  bank: Bank | null,
  loss: number,
): Better | null {
  const given = array.panels.flatMap((panels) => Array.from({ length: countOf(panels) }, () => panels))
  const sorted = [...given].sort((a, b) => likeness(system, a) - likeness(system, b))
  const isSorted = sorted.every((panels, i) => panels === given[i])
  const now = Math.max(1, array.entry.wiring.in_series?.value ?? 1)
  if (given.length > 40) return null
  const lengths = Array.from({ length: given.length }, (_, i) => i + 1).filter((n) => given.length % n === 0)
  let best: Better | null = null
  for (const [order, isOrderOther] of isSorted
    ? ([[given, false]] as const)
    : ([
        [given, false],
        [sorted, true],
      ] as const))
    for (const series of lengths) {
      if (series === now && !isOrderOther) continue
      const strings = cut(order, series)
      if (!fits(system, array, strings)) continue
      const own = mismatchOfStrings(system, { ...array, entry: wired(array, series) }, strings, bank)
      if (own && own.loss < (best?.loss ?? loss) - 0.005)
        best = { series, parallel: order.length / series, order, isOrderOther, loss: own.loss }
    }
  return best
}

/** Panels of like current on like planes stand beside each other. */
function likeness(system: ResolvedSystem, panels: ResolvedPanels): number {
  const { tilt, azimuth } = facingOf(panels, system)
  return (panels.panel?.record.stc.imp?.value ?? 0) + 1e-6 * (tilt + azimuth / 1000)
}

function cut(order: readonly ResolvedPanels[], series: number): Strings {
  return Array.from({ length: order.length / series }, (_, i) => order.slice(i * series, (i + 1) * series))
}

function wired({ entry }: ResolvedArray, series: number): ResolvedArray['entry'] {
  const { in_series: field, ...rest } = entry.wiring
  return field ? { ...entry, wiring: { ...rest, in_series: { ...field, value: series } } } : entry
}

function fits(system: ResolvedSystem, array: ResolvedArray, strings: Strings): boolean {
  const limits = [
    array.controller?.record.input.max_voltage,
    ...array.panels.map((p) => p.panel?.record.limits.system_voltage),
  ]
  const most = Math.min(...limits.map((limit) => limit?.value ?? Infinity))
  const least = voltageNeeded(system, array)?.start ?? 0
  return strings.every((string) => {
    const cold = sum(string, ({ panel }) => panel && vocAt(panel.record, system.coldest.value)?.value)
    const hot = sum(string, (p) => p.panel && vmpHot(p.panel.record, siteAt(system, p)))
    return cold !== null && cold <= most && (hot === null || least <= hot)
  })
}
