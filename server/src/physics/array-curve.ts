import { currentAt, openCircuit, voltageAt } from './single-diode.ts'
import { leastVoltage, stringPower, type Part } from './string-power.ts'

/** Panels in series, and how many such strings there are side by side. */
export interface PanelString {
  readonly parts: readonly Part[]
  readonly count: number
}

/**
 * Voltage of a string at a current; a panel that cannot carry it is bridged by its bypass diodes.
 *
 *     V = sum of count max(V_panel(I), -drop x bypass diodes)
 *
 * @param current  [A], below 0 where others push into the string
 * @returns        [V]
 * @source Kirchhoff; curve of each panel by its single-diode model
 */
export function stringVoltage({ parts }: PanelString, current: number): number {
  let voltage = 0
  for (const { diode, count, bypass } of parts) {
    const least = leastVoltage(bypass)
    // what is more than its light gives flows backwards through the shunt, if there is one
    const own = current < diode.il + diode.i0 || diode.rsh < Infinity ? voltageAt(diode, current) : least
    voltage += count * Math.max(own, least)
  }
  return voltage
}

/**
 * Largest power of strings in parallel, of all the humps that their curve may have: looked for on a grid, then narrowed down.
 *
 * @param strings  no blocking diodes: one may push current into another
 * @returns        [W]
 * @source Kirchhoff
 */
export function largestPower(strings: readonly PanelString[]): number {
  const [only] = strings
  if (strings.length === 1 && only && only.parts.length > 1) return only.count * stringPower(only.parts)
  const curves = strings.map(curveOf)
  const highest = Math.max(0, ...curves.map(({ open }) => open))
  if (!(highest > 0)) return 0
  const power = (voltage: number) => {
    let current = 0
    for (const curve of curves) current += curve.count * curve.current(voltage)
    return voltage * current
  }
  let best = 0
  let most = 0
  for (let k = 1; k < steps; k++) {
    const given = power((k * highest) / steps)
    if (given <= most) continue
    best = k
    most = given
  }
  return Math.max(most, narrowed(power, ((best - 1) * highest) / steps, ((best + 1) * highest) / steps))
}

/**
 * Power into a battery that holds all strings at one voltage; 0 where together they cannot reach it.
 *
 * @param voltage  of the battery [V]
 * @param drop     between array and battery [V]
 */
export function heldPower(strings: readonly PanelString[], voltage: number, drop: number): number {
  const current = strings.reduce((sum, string) => sum + string.count * curveOf(string).current(voltage + drop), 0)
  return Math.max(0, voltage * current)
}

const steps = 30

interface Curve {
  readonly count: number
  readonly open: number
  readonly current: (voltage: number) => number
}

/** A string of panels that are all alike has its current explicitly; of others points are worked out and joined. */
function curveOf(string: PanelString): Curve {
  const { parts, count } = string
  const [only] = parts
  if (parts.length === 1 && only) {
    const { diode, count: length } = only
    return { count, open: length * openCircuit(diode), current: (voltage) => currentAt(diode, voltage / length) }
  }
  const most = Math.max(...parts.map(({ diode }) => diode.il))
  // on into current pushed backwards
  const currents = new Float64Array([...currentsOf(parts), ...backwards.map((share) => share * most)])
  const voltages = currents.map((i) => stringVoltage(string, i))
  return { count, open: stringVoltage(string, 0), current: (voltage) => between(voltages, currents, voltage) }
}

/** Closer together where a panel runs out of current; the largest first. */
function currentsOf(parts: readonly Part[]): Float64Array {
  const currents = new Float64Array(parts.length * knee.length)
  let count = 0
  for (const { diode } of parts)
    for (const share of knee) {
      const current = share * diode.il
      let at = count++
      // those of one panel are in order already, so few are moved
      for (; at > 0 && currents[at - 1]! < current; at--) currents[at] = currents[at - 1]!
      currents[at] = current
    }
  return currents
}

const knee = [1, 0.999, 0.99, 0.97, 0.95, 0.92, 0.88, 0.83, 0.75, 0.65, 0.5, 0.3, 0.1, 0]
const backwards = [-0.1, -0.3, -0.6, -1, -2]

/** Voltages rise as currents fall. */
function between(voltages: Float64Array, currents: Float64Array, voltage: number): number {
  let low = 0
  let high = voltages.length - 1
  if (voltage <= voltages[low]!) return currents[low]!
  if (voltages[high]! <= voltage) return currents[high]!
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (voltages[middle]! <= voltage) low = middle
    else high = middle
  }
  const share = (voltage - voltages[low]!) / (voltages[high]! - voltages[low]!)
  return currents[low]! + share * (currents[high]! - currents[low]!)
}

/** Largest value between two places with one hump, by the golden section. */
function narrowed(of: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2
  let [a, b] = [from, to]
  let [low, high] = [b - golden * (b - a), a + golden * (b - a)]
  let [below, above] = [of(low), of(high)]
  for (let step = 0; step < 8; step++) {
    if (below < above) {
      a = low
      low = high
      below = above
      high = a + golden * (b - a)
      above = of(high)
    } else {
      b = high
      high = low
      above = below
      low = b - golden * (b - a)
      below = of(low)
    }
  }
  return Math.max(below, above)
}
