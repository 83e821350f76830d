/**
 * Largest resistance of a conductor at 20 °C by nominal area [mm2]: [ohm/m].
 *
 * @source IEC 60228, tables 2 and 3 (as quoted on three cable makers' pages that agree)
 */
export const conductorResistance = {
  'class 5 plain': perKilometre([26, 19.5, 13.3, 7.98, 4.95, 3.3, 1.91, 1.21, 0.78, 0.554, 0.386, 0.272, 0.206, 0.161]),
  'class 5 tinned': perKilometre([
    26.7, 20, 13.7, 8.21, 5.09, 3.39, 1.95, 1.24, 0.795, 0.565, 0.393, 0.277, 0.21, 0.164,
  ]),
  'class 2 plain': perKilometre([
    24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387, 0.268, 0.193, 0.153,
  ]),
} as const

export type Strand = keyof typeof conductorResistance

/** Resistivity of annealed copper at 20 °C [ohm mm2/m]. @source IEC 60028 (1925): 1/58 */
export const copper = 1 / 58

/**
 * Resistance of a metre of one conductor.
 *
 * By the table for a nominal area; otherwise as copper of that area, 2 % more for the lay of the strands as the table has it.
 *
 * @param area         [mm2], above 0
 * @param strand       class of the table
 * @param temperature  of the conductor [°C]
 * @returns            [ohm/m]
 * @source IEC 60228, table and its temperature correction (234.5 + 20)/(234.5 + T)
 */
export function resistancePerMetre(area: number, strand: Strand, temperature: number): number {
  const cold = conductorResistance[strand].get(area) ?? (1.02 * copper) / area
  return cold * ((234.5 + temperature) / 254.5)
}

export interface Drop {
  /** Of both conductors [ohm]. */
  readonly resistance: number
  /** [V] */
  readonly voltage: number
  /** Lost as heat [W]. */
  readonly power: number
}

/**
 * What a two-wire cable takes.
 *
 * @param perMetre  resistance of one conductor, see `resistancePerMetre` [ohm/m]
 * @param length    one way [m]
 * @param current   [A]
 * @source Ohm
 */
export function cableDrop(perMetre: number, length: number, current: number): Drop {
  const resistance = 2 * length * perMetre
  return { resistance, voltage: resistance * current, power: resistance * current * current }
}

/**
 * Area of an American wire gauge.
 *
 *     d = 0.127 mm x 92^((36 - n)/39)
 *
 * @param gauge  n: 18, 10, 1, and 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0
 * @returns      [mm2]
 * @source ASTM B258 (from memory)
 */
export function gaugeArea(gauge: number): number {
  const diameter = 0.127 * 92 ** ((36 - gauge) / 39)
  return (Math.PI / 4) * diameter ** 2
}

function perKilometre(values: readonly number[]): ReadonlyMap<number, number> {
  const areas = [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120]
  return new Map(areas.map((area, k) => [area, values[k]! / 1000]))
}
