import { currentAt, diodeVoltageAt, type Diode } from './single-diode.ts'

/** Panels of one string that are alike and see the same light. */
export interface Part {
  readonly diode: Diode
  readonly count: number
  /** Bypass diodes of one panel; 0 for none. */
  readonly bypass: number
}

/** Drop of a bypass diode while it conducts [V]; 0.4 to 0.7 is common practice, no source. */
const bypassDrop = 0.5
/** Without a bypass diode no voltage of practice drives more current through a panel than it has [V]. */
const unbridged = 1e5

/** Voltage below which a panel does not fall, as its bypass diodes then carry the current [V]. */
export const leastVoltage = (bypass: number): number => (bypass > 0 ? -bypassDrop * bypass : -unbridged)

/**
 * Largest power of panels in series, of all the humps that their bypass diodes make.
 *
 *     P = I sum of count max(V_panel(I), -drop x bypass diodes)
 *
 * From one current at which a panel is bridged to the next, the voltage is concave in the current, so that the power has one hump.
 *
 * @returns  [W]
 * @source Kirchhoff; curve of each panel by its single-diode model
 */
export function stringPower(parts: readonly Part[]): number {
  const stretches = inOrder(parts)
  let [best, from, bridged] = [0, 0, 0]
  for (let k = 0; k < stretches.length; k++) {
    const { part, until } = stretches[k]!
    // no power of this stretch is above that of its largest current at its largest voltage
    if (until > from && until * (bridged + mostVoltage(stretches, k, from)) > best)
      best = Math.max(best, hump(stretches, k, bridged, from))
    from = Math.max(from, until)
    bridged += part.count * leastVoltage(part.bypass)
  }
  return best
}

/** The currents that a panel carries without being bridged. */
interface Stretch {
  readonly part: Part
  readonly until: number
}

/** The weakest panels first. Two or three at a time, thousands of times a year: put in by hand, which is faster than a sort. */
function inOrder(parts: readonly Part[]): Stretch[] {
  const stretches: Stretch[] = []
  for (const part of parts) {
    const until = currentBelowZero(part.diode, leastVoltage(part.bypass))
    let at = stretches.length
    for (; at > 0 && stretches[at - 1]!.until > until; at--) stretches[at] = stretches[at - 1]!
    stretches[at] = { part, until }
  }
  return stretches
}

/** What `currentAt` gives for a voltage of 0 or less, where the diode hardly conducts. */
function currentBelowZero(d: Diode, v: number): number {
  const divider = 1 + d.rs / d.rsh
  const nearly = (d.il - v / d.rsh) / divider
  const through = d.i0 * Math.expm1((v + nearly * d.rs) / d.a)
  return Math.abs(through) < 1e-6 * nearly ? nearly - through / divider : currentAt(d, v)
}

/**
 * Newton steps to where the power no longer rises, kept in a bracket; the end of the bracket where it rises all the way. They are
 * taken in the voltage of the weakest panel's diode, of which its current is an explicit function and the others nearly straight.
 *
 * @param open     its panels from `first` on are not bridged
 * @param bridged  voltage of the others [V]
 */
function hump(open: readonly Stretch[], first: number, bridged: number, from: number): number {
  const { part: weakest, until } = open[first]!
  const { il, i0, rs, rsh, a } = weakest.diode
  let [low, high] = [from, until]
  const usual = usualShare * Math.min(il, until)
  let u = a * Math.log((il + i0 - (from < usual ? usual : (low + high) / 2)) / i0)
  // where the next voltages of the other diodes are looked for
  const near = open.map(() => 0)
  let best = 0
  for (let step = 0; step < 40 && high - low > 1e-4 * high; step++) {
    let through = i0 * Math.exp(u / a)
    let i = il + i0 - through - u / rsh
    if (!(low < i && i < high)) {
      i = (low + high) / 2
      u = diodeVoltageAt(weakest.diode, i)
      through = il + i0 - i - u / rsh
    }
    const conductance = through / a + 1 / rsh
    const resistance = 1 / conductance
    let v = bridged + weakest.count * (u - i * rs)
    let slope = -weakest.count * (rs + resistance)
    let bend = -weakest.count * (through / (a * a)) * resistance * resistance * resistance
    for (let k = first + 1; k < open.length; k++) {
      const { diode, count } = open[k]!.part
      const own = (near[k] = diodeVoltageNear(diode, i, near[k]!))
      const passed = diode.il + diode.i0 - i - own / diode.rsh
      const r = 1 / (passed / diode.a + 1 / diode.rsh)
      v += count * (own - i * diode.rs)
      slope -= count * (diode.rs + r)
      bend -= count * (passed / (diode.a * diode.a)) * r * r * r
    }
    best = Math.max(best, i * v)
    const rising = v + i * slope
    if (rising > 0) low = i
    else high = i
    // near its top the power is a parabola in the voltage, so that this much is missing, and a small share of it more or less
    const curvature = (2 * slope + i * bend) * conductance * conductance - (rising * through) / (a * a)
    const change = (rising * conductance) / curvature
    const missing = (-rising * conductance * change) / 2
    if (curvature < 0 && missing < 1e-5 * best) return Math.max(best, i * v + missing)
    u += change
  }
  return best
}

/** Maximum power current over short-circuit current, to begin with; common practice, no source. No result depends on it. */
const usualShare = 0.93

/** No less than the voltage of panels at a current: what the shunt takes is left out. */
function mostVoltage(open: readonly Stretch[], first: number, current: number): number {
  let voltage = 0
  for (let k = first; k < open.length; k++) {
    const { diode, count } = open[k]!.part
    voltage += count * (unshuntedVoltage(diode, current) - current * diode.rs)
  }
  return voltage
}

/** Of a diode without its shunt, 0 where it would be negative. */
const unshuntedVoltage = ({ il, i0, a }: Diode, current: number): number =>
  a * Math.log(Math.max(1, (il + i0 - current) / i0))

/** What `diodeVoltageAt` gives, by steps of third order from a voltage near by. */
function diodeVoltageNear(d: Diode, current: number, near: number): number {
  const rest = d.il + d.i0 - current
  let u = near
  for (let step = 0; step < 4; step++) {
    const through = rest - u / d.rsh
    if (!(through > 0)) break
    // u = a log(through / i0), whose logarithm is nearly straight
    const bend = 1 / (d.rsh * through)
    const slope = 1 + d.a * bend
    const newton = (d.a * Math.log(through / d.i0) - u) / slope
    u += newton * (1 - (newton * d.a * bend * bend) / (2 * slope))
    if (Math.abs(newton * bend) < 5e-3) return u
  }
  return diodeVoltageAt(d, current)
}
