import { celsius, figure, sayFrom, type Catalogue, type Said } from '../findings/message.ts'
import type { Proposal } from '../findings/rule.ts'
import { bankOf } from './bank.ts'
import type { ArrayFigures } from './figures.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'
import { switchDrop } from './pwm.ts'
import { said } from './said.ts'
import { countOf, isUniform, stringVocHot } from './strings.ts'

export const rewiring = {
  id: 'rewiring',
  messages: {
    remainder: ', if the number of panels changes',
    more: ', with more panels',
    tooMuchCurrent: ', but {strings} strings then give {current}, and the controller takes {limit}',
    wired: '{voltage} at {coldest}{strings}',
    strings: ', {strings} strings',
    fusedStrings: ', {strings} strings, each with a fuse',
  },
} as const satisfies Catalogue

const say = sayFrom(rewiring)

/** What a string must keep on a hot day for its controller [V]: loaded, to run, and open, to start; null where nothing is known of it. */
export function voltageNeeded(system: ResolvedSystem, { controller }: ResolvedArray): VoltageNeeded | null {
  const bank = bankOf(system)
  const type = controller?.record.type?.value
  if (!bank || !type) return null
  // headroom of a seeking controller, and the drop in one that switches: common practice, no source
  const run = bank.charging + (type === 'pwm' ? switchDrop : 1)
  const above = controller?.record.input.above_battery
  return {
    charging: bank.charging,
    run,
    start: type === 'mppt' && above ? Math.max(run, bank.charging + above.value) : run,
  }
}

export interface VoltageNeeded {
  readonly charging: number
  readonly run: number
  readonly start: number
}

/** One way to wire equal panels, with what it comes to. */
export interface Wiring {
  readonly series: number
  readonly cold: number
  /** Null where it is not known. */
  readonly hot: number | null
}

/** Longer strings are no matter of boats, vans and cabins. */
const longest = 24

/** Panels in series that keep every limit on the voltage of a string, hot and cold, in ascending order; none for unlike panels. */
export function wiringsThatWork(
  system: ResolvedSystem,
  array: ResolvedArray,
  figures: Pick<ArrayFigures, 'voc_cold_v' | 'vmp_hot_v'>,
): readonly Wiring[] {
  const { voc_cold_v: voc, vmp_hot_v: vmp } = figures
  const now = Math.max(1, array.entry.wiring.in_series?.value ?? 1)
  if (voc === null || !isUniform(array)) return []
  const limits = [
    array.controller?.record.input.max_voltage,
    ...array.panels.map((p) => p.panel?.record.limits.system_voltage),
  ]
  const most = Math.min(...limits.map((limit) => limit?.value ?? Infinity))
  const needed = voltageNeeded(system, array)
  const open = stringVocHot(system, array)
  return Array.from({ length: longest }, (_, i) => i + 1)
    .map((series) => ({ series, cold: (series * voc) / now, hot: vmp === null ? null : (series * vmp) / now }))
    .filter(({ cold, hot }) => cold <= most && (hot === null || (needed?.run ?? 0) <= hot))
    .filter(({ series }) => open === null || (needed?.start ?? 0) <= (series * open) / now)
}

/** Why the same panels cannot be wired in strings of so many; null where they can. */
export function obstacle(array: ResolvedArray, figures: ArrayFigures, series: number): Said | null {
  const count = countAll(array)
  if (count % series !== 0) return say({ say: count < series ? 'more' : 'remainder' })
  const { isc_design_a: current } = figures
  const limit = array.controller?.record.input.max_short_circuit_current
  const strings = count / series
  const next = current === null ? 0 : (current * strings) / Math.max(1, array.entry.wiring.in_parallel?.value ?? 1)
  if (!limit || next <= limit.value) return null
  return say({ say: 'tooMuchCurrent', with: { strings, current: figure(next, 'A'), limit: said(limit) } })
}

/** Another wiring of the same panels, of which none is left over; nothing where something stands against it. */
export function rewired(
  array: ResolvedArray,
  figures: ArrayFigures,
  { series, cold }: Wiring,
  coldest: number,
): Proposal | undefined {
  const { in_series: inSeries, in_parallel: inParallel } = array.entry.wiring
  if (!inSeries || !inParallel || obstacle(array, figures, series) !== null) return undefined
  const strings = countAll(array) / series
  return {
    field: inSeries,
    text: String(series),
    why: say({
      say: 'wired',
      with: {
        voltage: figure(cold, 'V'),
        coldest: celsius(coldest),
        strings: strings > 1 ? say({ say: strings > 2 ? 'fusedStrings' : 'strings', with: { strings } }) : null,
      },
    }),
    certainty: 'guess',
    ...(strings !== inParallel.value && { also: [{ field: inParallel, text: String(strings) }] }),
  }
}

const countAll = (array: ResolvedArray) => array.panels.reduce((sum, panels) => sum + countOf(panels), 0)
