import { currentAt, diodeVoltageAt, voltageAt, type Diode } from './single-diode.ts'

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
  const stretches = parts.map(stretchOf).sort((a, b) => a.until - b.until)
  let [best, from, bridged] = [0, 0, 0]
  for (let k = 0; k < stretches.length; k++) {
    const { part, until } = stretches[k]!
    // no power of this stretch is above that of its largest current at its largest voltage
    if (until > from && until * (bridged + voltageFrom(stretches, k, from)) > best)
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

const stretchOf = (part: Part): Stretch => ({ part, until: currentAt(part.diode, leastVoltage(part.bypass)) })

/**
 * Newton steps to where dP/dI = 0, kept in a bracket; the end of the bracket where the power rises all the way.
 *
 * @param open     its panels from `first` on are not bridged
 * @param bridged  voltage of the others [V]
 */
function hump(open: readonly Stretch[], first: number, bridged: number, from: number): number {
  const { part, until } = open[first]!
  const usual = usualShare * Math.min(part.diode.il, until)
  let [low, high] = [from, until]
  let i = from < usual ? usual : (low + high) / 2
  let best = 0
  for (let step = 0; step < 40; step++) {
    let [v, slope, bend] = [bridged, 0, 0]
    for (let k = first; k < open.length; k++) {
      const { diode, count } = open[k]!.part
      const { il, i0, rs, rsh, a } = diode
      const u = diodeVoltageAt(diode, i)
      const through = il + i0 - i - u / rsh
      const resistance = 1 / (through / a + 1 / rsh)
      v += count * (u - i * rs)
      slope -= count * (rs + resistance)
      bend -= count * (through / (a * a)) * resistance * resistance * resistance
    }
    best = Math.max(best, i * v)
    const rising = v + i * slope
    if (rising > 0) low = i
    else high = i
    let next = i - rising / (2 * slope + i * bend)
    if (!(low < next && next < high)) next = (low + high) / 2
    // around its top the power is flat: what is missing to it goes with the square of the step
    if (Math.abs(next - i) <= 1e-4 * i) break
    i = next
  }
  return best
}

/** Maximum power current over short-circuit current, to begin with; common practice, no source. No result depends on it. */
const usualShare = 0.93

function voltageFrom(open: readonly Stretch[], first: number, current: number): number {
  let voltage = 0
  for (let k = first; k < open.length; k++) voltage += open[k]!.part.count * voltageAt(open[k]!.part.diode, current)
  return voltage
}
