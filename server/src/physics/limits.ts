/**
 * Efficiency no single-junction cell can exceed in unconcentrated sunlight, front emission only, band gap 1.34 eV [1].
 *
 * @source W. Shockley, H. J. Queisser, J. Appl. Phys. 32 (1961) 510; value for the AM1.5 spectrum: S. Rühle, Solar Energy 130 (2016) 139
 */
export const shockleyQueisser = 0.337

/** The same for silicon with Auger recombination [1]. @source A. Richter, M. Hermle, S. W. Glunz, IEEE J. Photovoltaics 3 (2013) 1184 (from memory) */
export const siliconLimit = 0.294

/** Two junctions, one sun, currents free [1]. Own detailed balance on the ASTM G173 spectrum. */
export const tandemLimit = 0.461

/** Voc of an ideal silicon cell, 1.12 eV [V], and its current density [A/m2]. Own detailed balance on the ASTM G173 spectrum. */
export const siliconVocLimit = 0.878
export const siliconCurrentLimit = 438

/** What a concave current-voltage curve allows, each a share that must lie between the two. */
export interface Concavity {
  /** Vmp/Voc, between 0.5 and 1. */
  readonly voltage: number
  /** Imp/Isc, between 0.5 and 1. */
  readonly current: number
  /** Vmp/Voc + Imp/Isc, above 1. */
  readonly chord: number
}

/**
 * Shape of a curve's knee. Any curve of diodes and resistances is concave, so its tangent at maximum power passes above
 * both ends and the chord between the ends below it; that bounds all three numbers.
 *
 * @param vmp  [V]
 * @param imp  [A]
 * @param voc  [V]
 * @param isc  [A]
 * @source geometry of a concave curve
 */
export function concavity(vmp: number, imp: number, voc: number, isc: number): Concavity {
  return { voltage: vmp / voc, current: imp / isc, chord: vmp / voc + imp / isc }
}

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
