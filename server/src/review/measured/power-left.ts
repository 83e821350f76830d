import { lineThrough, type Line } from '../../physics/line.ts'
import { dayAfter, daysBetween } from '../../records/dates.ts'
import type { ResolvedArray, ResolvedSystem } from '../resolved.ts'
import { warrantedShare } from './warranted.ts'
import type { MeasuredFindings } from './measured-findings.ts'

/** What is left of the power of an array at one measurement. */
export interface PowerLeft {
  readonly date: string
  readonly array: ResolvedArray
  /** Since the panels were put up, or since they were first measured. */
  readonly years: number
  /** Share of the power that the records expect in the conditions of the day [1]. */
  readonly left: number
  readonly uncertainty: number
  /** Share that the warranty of the panels promises at this age; null where none does. */
  readonly warranted: number | null
  /** The strings that it was measured on. */
  readonly strings: readonly MeasuredFindings[]
  /** From Vmp and Imp, or where these were not measured from Voc and Isc, which fall less. */
  readonly from: 'power' | 'ends of the curve'
}

/** How the power of an array has gone, and when it will be less than is warranted. */
export interface Trend {
  readonly array: ResolvedArray
  readonly points: readonly PowerLeft[]
  /** From the day that years count from; null for one measurement. */
  readonly line: Line | null
  /** The first day on which the line is below the warranty; null where it stays above, or is not known. */
  readonly crosses: string | null
}

const daysOfYear = 365.25

/** By array, in the order of the dates. Strings that have a fault of their own are left out: it is not the panels that aged. */
export function trendsOf({ arrays }: ResolvedSystem, all: readonly MeasuredFindings[]): readonly Trend[] {
  return arrays.flatMap((array) => {
    const own = all.filter((one) => one.string.array === array && !one.isMistyped && !one.diagnosis)
    const dates = [...new Set(own.flatMap(({ string }) => string.measurement.entry.date?.value ?? []))].sort()
    const start = array.entry.installed?.value ?? dates[0]
    const points = dates.flatMap((date) => pointOf(array, date, start!, own) ?? [])
    if (points.length === 0) return []
    const line = lineOf(array, points)
    return [{ array, points, line, crosses: line && crossing(array, start!, line, points.at(-1)!.years) }]
  })
}

function pointOf(
  array: ResolvedArray,
  date: string,
  start: string,
  own: readonly MeasuredFindings[],
): PowerLeft | null {
  const days = daysBetween(start, date)
  const ofDay = own.filter(({ string }) => string.measurement.entry.date?.value === date)
  const known = ofDay.flatMap((one) => {
    const share = shareOf(one)
    return share ? [{ one, ...share }] : []
  })
  // of two kinds of shares the one from the power counts
  const best = known.some(({ from }) => from === 'power') ? known.filter(({ from }) => from === 'power') : known
  const [first] = best
  if (!first || days === undefined || days < 0) return null
  const years = days / daysOfYear
  return {
    date,
    array,
    years,
    left: best.reduce((sum, { share }) => sum + share, 0) / best.length,
    uncertainty: Math.max(...best.map(({ uncertainty }) => uncertainty)),
    warranted: warrantedShare(array, years),
    strings: best.map(({ one }) => one),
    from: first.from,
  }
}

function shareOf({ string: { power, readings } }: MeasuredFindings) {
  if (power?.off) return { share: 1 + power.off.share, uncertainty: power.off.uncertainty, from: 'power' as const }
  const [voc, isc] = [readings.get('voc')?.off, readings.get('isc')?.off]
  if (!voc || !isc) return null
  return {
    share: (1 + voc.share) * (1 + isc.share),
    uncertainty: Math.hypot(voc.uncertainty, isc.uncertainty),
    from: 'ends of the curve' as const,
  }
}

/** Least scatter of a measurement of power from one year to the next, with the same meter in the same hands [1] (common practice, no source). */
const scatter = 0.007

/** Through the points; through the full power at the start and the only point, where it is known when that was. */
function lineOf(array: ResolvedArray, points: readonly PowerLeft[]): Line | null {
  const measured = points.map(({ years, left }) => [years, left] as const)
  const [only] = points
  if (points.length === 1 && array.entry.installed && only!.years > 0)
    return lineThrough([[0, 1], ...measured], only!.uncertainty / 2)
  return lineThrough(measured, scatter)
}

/** Looked for month by month while a warranty runs. */
function crossing(array: ResolvedArray, start: string, { start: full, slope }: Line, from: number): string | null {
  if (slope >= 0) return null
  for (let month = 0; month < 12 * 40; month++) {
    const years = Math.max(from, 0) + month / 12
    const warranted = warrantedShare(array, years)
    if (warranted === null) return null
    if (full + slope * years < warranted) return dayAfter(start, years * daysOfYear) ?? null
  }
  return null
}
