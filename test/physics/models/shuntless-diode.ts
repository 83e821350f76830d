/**
 * Cheapest test whether a diode can have these ratings: the one without shunt, whose Lambert terms are dropped.
 *
 *     a = (2 Vmp - Voc) / (y/(1 - y) + ln(1 - y)),  y = Imp/Isc,  rs = (Voc - Vmp + a ln(1 - y)) / Imp
 *
 * `a` is the largest a diode with these ratings can have where rs is not negative. An `a` that is not above 0 means no diode.
 *
 * @param vmp  [V]
 * @param imp  [A]
 * @param voc  [V]
 * @param isc  [A]
 * @returns    a [V] and rs [ohm]; NaN or infinite for Imp at or above Isc
 * @source the four-parameter model, J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, chapter 23 (from memory)
 */
export function shuntlessDiode(vmp: number, imp: number, voc: number, isc: number): { a: number; rs: number } {
  const y = imp / isc
  const a = (2 * vmp - voc) / (y / (1 - y) + Math.log(1 - y))
  return { a, rs: (voc - vmp + a * Math.log(1 - y)) / imp }
}
