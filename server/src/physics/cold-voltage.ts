/** Upper end of each band of the lowest air temperature [°C], and the factor down to the next. */
const bands = [
  [24, 1.02],
  [19, 1.04],
  [14, 1.06],
  [9, 1.08],
  [4, 1.1],
  [-1, 1.12],
  [-6, 1.14],
  [-11, 1.16],
  [-16, 1.18],
  [-21, 1.2],
  [-26, 1.21],
  [-31, 1.23],
  [-36, 1.25],
] as const

/**
 * By how much the open-circuit voltage of crystalline silicon rises at the lowest expected air temperature, for panels whose
 * sheet gives no coefficient. Conservative: sheets give about two thirds of it.
 *
 * @param air  lowest expected air [°C]; below -40 the factor goes on by 0.385 %/K, the slope at the table's end; 25 and above
 *             gives 1
 * @returns    factor on Voc
 * @source US National Electrical Code, table 690.7(A) (as quoted in an open code)
 */
export function coldVoltageFactor(air: number): number {
  if (air < -40) return 1.25 + 0.00385 * (-40 - air)
  const whole = Math.floor(air)
  return bands.findLast(([upper]) => whole <= upper)?.[1] ?? 1
}
