/** Standard ratings [A], by series, ascending. */
export const fuseSizes = {
  /** Cylindrical 10 x 38 mm for photovoltaic strings. @source makers' lists (from memory) */
  string: [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32],
  /** Blade and bolt-down fuses of vehicles and boats. @source makers' lists, ISO 8820 (from memory) */
  vehicle: [
    1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400,
    500,
  ],
  /** @source US National Electrical Code 240.6(A) (as quoted by two commentaries) */
  us: [
    1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
    450, 500, 600,
  ],
  /** @source IEC 60269 (from memory) */
  iec: [2, 4, 6, 8, 10, 12, 16, 20, 25, 32, 35, 40, 50, 63, 80, 100, 125, 160, 200, 224, 250, 315, 355, 400, 500, 630],
} as const

/** Every standard rating of any series [A], ascending. */
export const allFuseSizes: readonly number[] = [...new Set<number>(Object.values(fuseSizes).flat())].sort(
  (a, b) => a - b,
)

/** Smallest standard rating of a series at or above a current [A]; null above the largest. */
export function nextFuse(series: readonly number[], current: number): number | null {
  return series.find((size) => size >= current) ?? null
}

/** Between which ratings a string fuse must lie [A]; `high` below `low` means that none does. */
export interface FuseWindow {
  readonly low: number
  readonly high: number
}

/**
 * Ratings a string fuse may have: it must carry the string in bright sun and blow before the module is harmed.
 *
 *     IEC  1.5 Isc < rating < 2.4 Isc
 *     NEC  1.25 x 1.25 Isc < rating
 *
 * and at most the module's maximum series fuse; without a practice named, both.
 *
 * @param isc         short-circuit current of the string [A]
 * @param seriesFuse  maximum series fuse of the module [A]; Infinity where unknown
 * @source IEC 62548 practice (as quoted by a worked example); US National Electrical Code 690.9 (as quoted by trade articles)
 */
export function stringFuseWindow(isc: number, seriesFuse: number, practice?: Practice): FuseWindow {
  const low = (practice === 'IEC' ? 1.5 : 1.5625) * isc
  return { low, high: Math.min(practice === 'NEC' ? Infinity : 2.4 * isc, seriesFuse) }
}

export type Practice = 'IEC' | 'NEC'

/**
 * Current that the other strings can drive back through a faulted one [A]; above the module's maximum series fuse each
 * string needs a fuse of its own.
 *
 * @param strings  in parallel
 * @param isc      short-circuit current of one string [A]
 * @source IEC 62548 practice (as quoted by a worked example), with the 1.25 for bright sun of US practice
 */
export function reverseCurrent(strings: number, isc: number): number {
  return (strings - 1) * 1.25 * isc
}

/**
 * Current a photovoltaic circuit is designed for: 1.25 times for sun brighter than at test conditions.
 *
 * @param isc  short-circuit current of all parallel strings [A]
 * @source US National Electrical Code 690.8 (as quoted by trade articles)
 */
export function designCurrent(isc: number): number {
  return 1.25 * isc
}
