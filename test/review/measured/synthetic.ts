import { stringVoltage, type PanelString } from '../../../server/src/physics/array-curve.ts'
import type { Part } from '../../../server/src/physics/string-power.ts'
import { diodeAt } from '../../../server/src/physics/diode-model.ts'
import { fitDiode } from '../../../server/src/physics/fit-diode.ts'
import { random } from '../../../server/src/physics/random.ts'
import { openCircuit, type Diode } from '../../../server/src/physics/single-diode.ts'

/** Panels of invented sheets that the synthetic systems are made of. */
export const sheets = {
  flexible: {
    pmax: 110,
    vmp: 18.6,
    imp: 5.92,
    voc: 22.1,
    isc: 6.31,
    cells: 36,
    diodes: 2,
    alpha: 0.0005,
    beta: -0.0029,
    gamma: -0.0038,
  },
  half: {
    pmax: 55,
    vmp: 18.5,
    imp: 2.98,
    voc: 22.0,
    isc: 3.18,
    cells: 36,
    diodes: 2,
    alpha: 0.0005,
    beta: -0.003,
    gamma: -0.0039,
  },
  large: {
    pmax: 400,
    vmp: 31.0,
    imp: 12.91,
    voc: 37.1,
    isc: 13.8,
    cells: 54,
    diodes: 3,
    alpha: 0.0005,
    beta: -0.0026,
    gamma: -0.0034,
  },
} as const
export type Sheet = keyof typeof sheets

/** What the panels of a string are like on the day. */
export interface Scene {
  readonly sheet: Sheet
  readonly count: number
  readonly irradiance: number
  readonly temperature: number
  /** Share of the light that reaches all panels of the string. */
  readonly light?: number
  /** Panels that are not there, rows of cells that a bypass diode shorts, panels connected the other way round. */
  readonly missing?: number
  readonly shorted?: number
  /** Share of current and voltage that age has left. */
  readonly age?: number
}

export interface Reading {
  readonly voc: number
  readonly isc: number
  readonly vmp: number
  readonly imp: number
}

const models = new Map<Sheet, ReturnType<typeof fitDiode>>()

/** What an ideal meter shows on a string, from the curves of its panels. */
export function ideal(scene: Scene): Reading {
  const { sheet, count, irradiance, temperature, light = 1, missing = 0, shorted = 0, age = 1 } = scene
  const { diodes, ...ratings } = sheets[sheet]
  const fit = models.get(sheet) ?? fitDiode(ratings)
  models.set(sheet, fit)
  if (!fit.ok) throw new Error(fit.why)
  const whole = diodeAt(fit.params, irradiance * light, temperature)
  const parts: Part[] = [{ diode: whole, count: count - missing - (shorted > 0 ? 1 : 0), bypass: diodes }]
  // a panel without some of its cells
  if (shorted > 0) parts.push({ diode: part(whole, 1 - shorted / diodes), count: 1, bypass: diodes - shorted })
  const string: PanelString = { parts, count: 1 }
  const voltage = (current: number) => stringVoltage(string, current)
  const isc = shortCircuit(voltage, whole.il)
  const best = top(voltage, isc)
  const [v, i] = [Math.sqrt(age), Math.sqrt(age)]
  return {
    voc: parts.reduce((sum, one) => sum + one.count * openCircuit(one.diode), 0),
    isc: isc * i,
    vmp: best.v * v,
    imp: best.i * i,
  }
}

const part = (diode: Diode, share: number): Diode => ({
  ...diode,
  rs: diode.rs * share,
  rsh: diode.rsh * share,
  a: diode.a * share,
})

function shortCircuit(voltage: (current: number) => number, most: number): number {
  let [low, high] = [0, most]
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    if (voltage(middle) > 0) low = middle
    else high = middle
  }
  return low
}

function top(voltage: (current: number) => number, isc: number): { v: number; i: number } {
  let best = { v: 0, i: 0 }
  for (let k = 1; k < 1000; k++) {
    const i = (isc * k) / 1000
    const v = voltage(i)
    if (v * i > best.v * best.i) best = { v, i }
  }
  return best
}

/** Noise of a good meter in calm hands: standard deviations, as shares and kelvins. */
export const noise = { voltage: 0.004, current: 0.01, irradiance: 0.015, temperature: 1.5 }

/** A source of normal deviates that gives the same ones for the same seed. */
export function normal(seed: number): () => number {
  let state = seed
  const next = () => {
    const drawn = random(state)
    state = drawn.state
    return drawn.value
  }
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
}
