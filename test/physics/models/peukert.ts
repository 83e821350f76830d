/**
 * How long a battery lasts at a steady current, above the current it was rated at.
 *
 *     t = H (C / (I H))^n
 *
 * @param capacity  C at the rated time [Ah]
 * @param over      H, the rated time [h]
 * @param current   I [A], above 0
 * @param exponent  n, 1 for none
 * @returns         [h]
 * @source W. Peukert, Elektrotechnische Zeitschrift 20 (1897) 287-288 (from memory)
 */
export function peukertHours(capacity: number, over: number, current: number, exponent: number): number {
  return over * (capacity / (current * over)) ** exponent
}
