import { boltzmannVolt, stcKelvin } from './constants.ts'
import type { DiodeModel } from './diode-model.ts'
import { gapSlope } from './diode-model.ts'
import { solveAtIdeality, type Anchors, type Solution } from './fit-resistances.ts'

/** What a datasheet says at standard test conditions, and its three coefficients. */
export interface Ratings {
  /** Maximum power [W]. */
  readonly pmax: number
  /** Voltage and current at maximum power [V], [A]. */
  readonly vmp: number
  readonly imp: number
  /** Open-circuit voltage [V], short-circuit current [A]. */
  readonly voc: number
  readonly isc: number
  /** Cells (junction stacks) in series, or null where it is not known; it only shows whether the ideality is physical. */
  readonly cells: number | null
  /** Relative temperature coefficients of Isc, Voc, Pmax [1/K]. */
  readonly alpha: number
  readonly beta: number
  readonly gamma: number
}

export type Fit = { readonly ok: true; readonly params: DiodeModel } | { readonly ok: false; readonly why: string }

/** Diode ideality of recombination in three-particle collisions, the lowest a silicon diode can have (from memory). */
export const lowestIdeality = 2 / 3

/** Lowest `a` over Voc where the cells are not counted: ideality 2/3 and 1.9 V a cell, as two junctions have. */
const lowestShare = 0.009

/** Series resistance may change by this share per kelvin; metal has 0.004. A steeper slope is not believed. */
const steepestResistance = 0.02

/**
 * Single-diode model of a module from its datasheet, which it reproduces: Pmax, Vmp, Imp, Voc, Isc at standard test
 * conditions exactly (Vmp and Imp both stretched a little where their product is not Pmax), and the slopes with temperature
 * of Isc, of Voc, and of Pmax.
 *
 * Five parameters and three slopes are fixed in this order: `a` explicitly from Voc, alpha and beta, lowered as far as the
 * four ratings ask for a resistance that is not negative; rs by a bracketed root; i0, rsh, il linearly; then alpha as the slope of
 * il, beta by the band gap in the law of i0, gamma by a slope of rs, which leaves Isc and Voc alone. Where that slope
 * would be steeper than 2 %/K, `a` is lowered further; where that does not suffice, the slope is capped, and
 * `gammaResidual` says what is left over.
 *
 * Made for crystalline silicon; fair for CIGS and CdTe, poor for amorphous silicon at low light. Takes some 10 microseconds.
 *
 * @param r  ratings; any numbers, also impossible ones
 * @returns  the model, or a sentence saying why no diode with resistances behaves like that; never NaN
 * @source W. De Soto, S. A. Klein, W. A. Beckman, Solar Energy 80 (2006) 78-88 (the conditions at STC, and the translation);
 *         E. I. Batzelis, IEEE J. Photovoltaics 7 (2017) 1400-1409 (a from alpha and beta); slope of rs: own
 */
export function fitDiode(r: Ratings): Fit {
  const why = whyNot(r)
  if (why !== null) return { ok: false, why }
  const stretch = Math.sqrt(r.pmax / (r.vmp * r.imp))
  const anchors = { vmp: r.vmp * stretch, imp: r.imp * stretch, voc: r.voc, isc: r.isc }
  const whyNotStretched = whyNoKnee(anchors)
  if (whyNotStretched !== null) return { ok: false, why: whyNotStretched }

  const delta = (1 - r.beta * stcKelvin) / (50.1 - r.alpha * stcKelvin)
  const thermal = r.cells === null ? null : r.cells * boltzmannVolt * stcKelvin
  const lowest = thermal === null ? lowestShare * r.voc : lowestIdeality * thermal
  const most = largestIdeality(anchors, Math.max(delta * r.voc, lowest), lowest)
  if (most === null) return { ok: false, why: tooSharp(thermal) }

  let best = withSlopes(most, anchors, r)
  let a = most.a
  for (let step = 0; step < 12 && Math.abs(best.gammaResidual) > 1e-9; step++) {
    a *= 0.93
    if (a < lowest) break
    const next = solveAtIdeality(anchors, a)
    if (next === null) break
    const candidate = withSlopes(next, anchors, r)
    if (Math.abs(candidate.gammaResidual) >= Math.abs(best.gammaResidual)) break
    best = candidate
  }
  return { ok: true, params: best }
}

/** What no curve of a diode with resistances can do, in a sentence; null where nothing speaks against one. */
function whyNot(r: Ratings): string | null {
  for (const [name, value] of Object.entries({ Pmax: r.pmax, Vmp: r.vmp, Imp: r.imp, Voc: r.voc, Isc: r.isc })) {
    if (!(value > 1e-9 && value < 1e9)) return `${name} must be a number above 0`
  }
  if (r.cells !== null && !(r.cells >= 1 && r.cells < 1e6)) return 'there must be at least one cell in series'
  for (const [name, value] of Object.entries({ Isc: r.alpha, Voc: r.beta, Pmax: r.gamma })) {
    if (!(Math.abs(value) < 0.02))
      return `the temperature coefficient of ${name} must be a number, and below 2 % a kelvin`
  }
  if (r.beta >= 0) return 'Voc must fall with temperature'
  const ratio = r.pmax / (r.vmp * r.imp)
  if (ratio < 0.94 || 1.06 < ratio) return `Pmax is ${percent(ratio)} of Vmp x Imp`
  return whyNoKnee(r)
}

/** The curve is concave, so its tangent at maximum power passes above both ends, and the chord between them below it. */
function whyNoKnee({ vmp, imp, voc, isc }: Anchors): string | null {
  const v = vmp / voc
  const i = imp / isc
  if (v >= 1) return `Vmp is ${percent(v)} of Voc, and must be below it`
  if (i >= 1) return `Imp is ${percent(i)} of Isc, and must be below it`
  if (v <= 0.5) return `Vmp is ${percent(v)} of Voc, and no diode curve has its maximum power point in the lower half`
  if (i <= 0.5) return `Imp is ${percent(i)} of Isc, and no diode curve has its maximum power point in the lower half`
  if (v * i < 0.3) return `the fill factor is ${percent(v * i)}, hardly more than the 25 % of a mere resistance`
  return null
}

const percent = (share: number) => `${(100 * share).toFixed(1)} %`

const tooSharp = (thermal: number | null) =>
  thermal === null
    ? 'the knee of the curve is sharper than that of any diode'
    : 'the knee of the curve is sharper than so many cells in series can have, with ideality 2/3 or more'

/** The solution with the largest `a` up to a start that has no negative resistance; null where there is none down to the lowest. */
function largestIdeality(anchors: Anchors, start: number, lowest: number): Solution | null {
  const wished = solveAtIdeality(anchors, start)
  if (wished !== null) return wished
  let high = start
  let low = start
  let found: Solution | null = null
  while (found === null) {
    if (low <= lowest) return null
    high = low
    low = Math.max(0.8 * low, lowest)
    found = solveAtIdeality(anchors, low)
  }
  while (high - low > 2e-3 * low) {
    const middle = (low + high) / 2
    const next = solveAtIdeality(anchors, middle)
    if (next === null) high = middle
    else [low, found] = [middle, next]
  }
  return found
}

/** Adds what makes the slopes of Isc, Voc and Pmax with temperature those of the sheet, each to first order at 25 °C. */
function withSlopes(s: Solution, anchors: Anchors, { alpha, beta, gamma }: Ratings): DiodeModel {
  const at = (rsSlope: number) => slopesAt(s, anchors, alpha, beta, rsSlope)
  // All are linear in the slope of rs, so two of its values give the one that meets gamma.
  const none = at(0).gamma
  const wished = (gamma - none) / (at(1).gamma - none)
  const rsSlope = s.rs === 0 ? 0 : Math.min(steepestResistance, Math.max(-steepestResistance, wished))
  const { ilSlope, rise, gamma: reached } = at(rsSlope)
  const gap = ((rise * stcKelvin - 3) * boltzmannVolt * stcKelvin) / (1 + gapSlope * stcKelvin)
  return { ...s, ilSlope, gap, rsSlope, gammaResidual: rsSlope === wished ? 0 : gamma - reached }
}

/**
 * Slopes of il [A/K] and ln i0 [1/K] that meet those of Isc and Voc where rs has a relative slope, and what that makes of Pmax
 * [1/K]. The diode equation at each of the three points is differentiated by temperature.
 */
function slopesAt(s: Solution, { vmp, imp, voc, isc }: Anchors, alpha: number, beta: number, rsSlope: number) {
  const { i0, rs, a } = s
  const g = 1 / s.rsh
  const um = vmp + imp * rs
  const atIsc = i0 * Math.exp((isc * rs) / a)
  const atVoc = i0 * Math.exp(voc / a)
  const atMpp = i0 * Math.exp(um / a)

  const drop = isc * rs
  const shortOnly = isc * alpha + (atIsc / a + g) * drop * (alpha + rsSlope) - (atIsc * drop) / (a * stcKelvin)
  const openOnly = (atVoc / a) * voc * (beta - 1 / stcKelvin) + voc * beta * g
  const rise = (shortOnly - openOnly) / (atVoc - atIsc)
  const ilSlope = shortOnly + rise * (atIsc - i0)

  const conductance = atMpp / a + g
  const atVmp = ilSlope - rise * (atMpp - i0) + (atMpp * um) / (a * stcKelvin) - conductance * imp * rs * rsSlope
  return { ilSlope, rise, gamma: atVmp / (1 + rs * conductance) / imp }
}
