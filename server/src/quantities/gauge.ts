/**
 * Cross-section of a solid conductor of an American wire gauge.
 *
 *     d = 0.127 mm x 92^((36 - n) / 39),  A = pi/4 d^2
 *
 * @param gauge  n; 0 is 1/0, -1 is 2/0, -2 is 3/0, -3 is 4/0
 * @returns      area [m2]
 * @source ASTM B258 (from memory)
 */
export function gaugeArea(gauge: number): number {
  const diameter = 0.127e-3 * 92 ** ((36 - gauge) / 39)
  return (Math.PI / 4) * diameter ** 2
}

/** The gauge of a cross-section [m2], not rounded to one that is made. */
export function gaugeOf(area: number): number {
  const diameter = Math.sqrt((4 * area) / Math.PI)
  return 36 - (39 * Math.log(diameter / 0.127e-3)) / Math.log(92)
}

/** `10`, `2/0`, `00` as a gauge number; NaN for sizes that are not made. */
export function gaugeNumber(size: string): number {
  const zeros = /^([1-4])\/0$/.exec(size)
  if (zeros) return 1 - Number(zeros[1])
  if (/^0{1,4}$/.test(size)) return 1 - size.length
  const number = Number(size)
  return Number.isInteger(number) && 0 <= number && number <= 40 ? number : NaN
}

/** How a gauge is printed: `10 AWG`, `2/0 AWG`. */
export const gaugeText = (gauge: number): string => (gauge > 0 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`)
