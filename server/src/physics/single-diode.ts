import { lambertWOfExp } from './lambert-w.ts'

/**
 * The five parameters of the single-diode model at one irradiance and temperature.
 *
 *     I = il - i0 (exp((V + I rs) / a) - 1) - (V + I rs) / rsh
 */
export interface Diode {
  /** Light current [A], at least 0. */
  readonly il: number
  /** Saturation current [A], above 0. */
  readonly i0: number
  /** Series resistance [ohm], at least 0. */
  readonly rs: number
  /** Shunt resistance [ohm], above 0; may be Infinity. */
  readonly rsh: number
  /** Modified ideality n Ns k T / q [V], above 0. */
  readonly a: number
}

/** A point of a current-voltage curve: volt, ampere, watt. */
export interface Point {
  readonly v: number
  readonly i: number
  readonly p: number
}

/**
 * Current at a voltage, explicitly by Lambert W.
 *
 * Good to 1e-9 of the short-circuit current at every voltage, also beyond open circuit (the current is then negative).
 *
 * @param d  diode
 * @param v  terminal voltage [V]
 * @returns  current [A]
 * @source A. Jain, A. Kapoor, Solar Energy Materials and Solar Cells 81 (2004) 269-277
 */
export function currentAt(d: Diode, v: number): number {
  const g = 1 / d.rsh
  if (d.rs === 0) return d.il - d.i0 * Math.expm1(v / d.a) - v * g
  const divider = 1 + d.rs * g
  const scale = d.a * divider
  const w = lambertWOfExp(Math.log((d.i0 * d.rs) / scale) + (d.rs * (d.il + d.i0) + v) / scale)
  return (d.il + d.i0 - v * g) / divider - (d.a / d.rs) * w
}

/**
 * Voltage at a current, explicitly by Lambert W; written as a logarithm of W, so a large shunt resistance costs no digits.
 *
 * @param d  diode
 * @param i  current [A]; above il + i0 the voltage is negative, and -Infinity where there is no shunt
 * @returns  terminal voltage [V]
 * @source A. Jain, A. Kapoor, Solar Energy Materials and Solar Cells 81 (2004) 269-277
 */
export function voltageAt(d: Diode, i: number): number {
  return diodeVoltageAt(d, i) - i * d.rs
}

/** Open-circuit voltage [V]. */
export function openCircuit(d: Diode): number {
  return diodeVoltageAt(d, 0)
}

/**
 * The maximum power point: where dP/dV = 0 between short and open circuit.
 *
 * Newton steps in the voltage across the diode, of which current and voltage are explicit functions, kept in a bracket.
 *
 * @param d  diode
 * @returns  the point; all 0 in the dark
 * @source definition; parametrised by the diode voltage, so no equation is solved for the current
 */
export function maxPower(d: Diode): Point {
  let high = openCircuit(d)
  if (!(high > 0)) return { v: 0, i: 0, p: 0 }
  let low = 0
  const g = 1 / d.rsh
  let u = high - d.a * Math.log(1 + high / d.a)
  for (let step = 0; step < 60; step++) {
    const e = d.i0 * Math.exp(u / d.a)
    const i = d.il + d.i0 - e - u * g
    const slope = e / d.a + g
    const v = u - i * d.rs
    const f = i * (1 + slope * d.rs) - v * slope
    if (f > 0) low = u
    else high = u
    const bend = e / (d.a * d.a)
    const df = -slope * (1 + slope * d.rs) + i * bend * d.rs - (1 + slope * d.rs) * slope - v * bend
    let next = u - f / df
    if (!(low < next && next < high)) next = (low + high) / 2
    if (Math.abs(next - u) <= 1e-13 * high) break
    u = next
  }
  const i = d.il - d.i0 * Math.expm1(u / d.a) - u * g
  const v = u - i * d.rs
  return v > 0 && i > 0 ? { v, i, p: v * i } : { v: 0, i: 0, p: 0 }
}

/**
 * The curve from short to open circuit, points closer together past the knee.
 *
 * @param d      diode
 * @param count  number of points, at least 2
 * @returns      points by rising voltage; the first has v = 0, the last i = 0
 */
export function curve(d: Diode, count: number): Point[] {
  const voc = openCircuit(d)
  const points: Point[] = []
  for (let k = 0; k < count; k++) {
    const v = voc * Math.sin(((Math.PI / 2) * k) / (count - 1))
    const i = k === count - 1 ? 0 : currentAt(d, v)
    points.push({ v, i, p: v * i })
  }
  return points
}

/** Voltage across the diode itself, V + I rs [V], at a current [A]. */
export function diodeVoltageAt(d: Diode, i: number): number {
  const rest = d.il + d.i0 - i
  if (d.rsh === Infinity) return d.a * Math.log(rest / d.i0)
  const shunt = d.a / d.rsh
  const share = rest / shunt
  const w = lambertWOfExp(Math.log(d.i0 / shunt) + share)
  return share < 1 ? d.a * (share - w) : d.a * Math.log((w * shunt) / d.i0)
}
