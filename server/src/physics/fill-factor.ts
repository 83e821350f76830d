/**
 * Fill factor of an ideal diode without resistances.
 *
 *     FF0 = (v - ln(v + 0.72)) / (v + 1)
 *
 * Good to about 2e-4 for v above 10.
 *
 * @param v  open-circuit voltage of one cell over its thermal voltage n k T / q [1]
 * @returns  fill factor [1]
 * @source M. A. Green, Solid-State Electronics 24 (1981) 788-789 (from memory)
 */
export function greenFillFactor(v: number): number {
  return (v - Math.log(v + 0.72)) / (v + 1)
}
