import { gaugeArea } from './cable.ts'

/** Insulation ratings the table has [°C]. */
export const insulationRatings = [60, 75, 80, 90, 105, 125, 200] as const

/** Allowable current by wire gauge (see `gaugeArea`) and insulation rating, below 50 V, air of 30 °C [A]. @source 33 CFR 183.425, table 5 */
export const allowableCurrent: readonly (readonly [gauge: number, currents: readonly number[]])[] = [
  [18, [10, 10, 15, 20, 20, 25, 25]],
  [16, [15, 15, 20, 25, 25, 30, 35]],
  [14, [20, 20, 25, 30, 35, 40, 45]],
  [12, [25, 25, 35, 40, 45, 50, 55]],
  [10, [40, 40, 50, 55, 60, 70, 70]],
  [8, [55, 65, 70, 70, 80, 90, 100]],
  [6, [80, 95, 100, 100, 120, 125, 135]],
  [4, [105, 125, 130, 135, 160, 170, 180]],
  [3, [120, 145, 150, 155, 180, 195, 210]],
  [2, [140, 170, 175, 180, 210, 225, 240]],
  [1, [165, 195, 210, 210, 245, 265, 280]],
  [0, [195, 230, 245, 245, 285, 305, 325]],
  [-1, [225, 265, 285, 285, 330, 355, 370]],
  [-2, [260, 310, 330, 330, 385, 410, 430]],
  [-3, [300, 360, 385, 385, 445, 475, 510]],
]

/** Insulation ratings of the metric table [°C]; the third is for 85 to 90 °C. */
export const metricRatings = [60, 70, 85, 105] as const

/**
 * Allowable current by nominal area [mm2] and insulation rating, air of 30 °C [A].
 *
 * @source ISO 10133, now ISO 13297 (small craft), annex A (from memory)
 */
export const metricCurrent: readonly (readonly [area: number, currents: readonly number[]])[] = [
  [0.75, [6, 10, 12, 16]],
  [1, [8, 14, 18, 20]],
  [1.5, [12, 18, 21, 25]],
  [2.5, [17, 25, 30, 35]],
  [4, [22, 35, 40, 45]],
  [6, [29, 45, 50, 60]],
  [10, [40, 65, 70, 90]],
  [16, [54, 90, 100, 130]],
  [25, [71, 120, 140, 170]],
  [35, [87, 160, 185, 210]],
  [50, [105, 210, 230, 270]],
  [70, [135, 265, 285, 330]],
]

/**
 * Current that a conductor of a metric size may carry in free air of 30 °C; above 70 mm2 by the table of wire gauges.
 *
 * The size and the rating at or below the given ones are taken, so one between two is never credited with more.
 *
 * @param area        of the conductor [mm2]
 * @param insulation  conductor temperature the insulation is rated for [°C]
 * @returns           [A]; null below 0.75 mm2 or 60 °C, of which the table has nothing
 * @source see `metricCurrent`
 */
export function metricAmpacity(area: number, insulation: number): number | null {
  const row = metricCurrent.findLast(([size]) => size <= area)
  const column = metricRatings.findLastIndex((rating) => rating <= insulation)
  if (row === undefined || column === -1) return null
  const own = row[1][column]!
  return area > 75 ? Math.max(own, ampacity(area, insulation)!) : own
}

/**
 * Current a conductor of a wire gauge may carry in free air of 30 °C.
 *
 * The gauge at or below the area and the insulation rating at or below the given one are taken, so a size or a rating between
 * two is never credited with more.
 *
 * @param area        of the conductor [mm2]
 * @param insulation  conductor temperature the insulation is rated for [°C]
 * @returns           [A]; null below 18 AWG or 60 °C, of which the table has nothing
 * @source 33 CFR 183.425, table 5
 */
export function ampacity(area: number, insulation: number): number | null {
  const row = allowableCurrent.findLast(([gauge]) => 0.999 * gaugeArea(gauge) <= area)
  const column = insulationRatings.findLastIndex((rating) => rating <= insulation)
  return row === undefined || column === -1 ? null : row[1][column]!
}

/**
 * Factor on the allowable current in other air than 30 °C; 1 in cooler air, 0 where the air is as hot as the insulation allows.
 *
 *     sqrt((T - air)/(T - 30))
 *
 * @param insulation  T, rating [°C], above 30
 * @param air         around the cable [°C]
 * @source heat balance of a conductor; agrees with the engine-space factors of US boat practice (0.58 at 60, 0.75 at 75,
 *         0.82 at 90, 0.85 at 105 °C insulation in air of 50 °C)
 */
export function airFactor(insulation: number, air: number): number {
  if (air <= 30) return 1
  return air >= insulation ? 0 : Math.sqrt((insulation - air) / (insulation - 30))
}

/**
 * Factor on the allowable current for current-carrying conductors lying together. US boat practice asks for it only from
 * 50 V up; the heat is there below as well.
 *
 * @param count  conductors in the bundle
 * @source American Boat and Yacht Council, E-11 (as quoted by marine trade pages)
 */
export function bundleFactor(count: number): number {
  return count <= 2 ? 1 : count === 3 ? 0.7 : count <= 6 ? 0.6 : count <= 24 ? 0.5 : 0.4
}
