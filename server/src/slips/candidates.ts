import { at, nameOf, pointers, type Evidence } from './evidence.ts'
import { coherence, type Frame } from './coherence.ts'
import { edits } from './edits.ts'
import { anothersLog, siblingTexts } from './family.ts'
import { decimalsOf, isAbsolute, metres, takeApart, type Printed } from './printed.ts'

/** One way in which the record may have been meant. */
export interface Candidate {
  readonly places: readonly number[]
  readonly values: readonly number[]
  /** Half a unit of the last digit of the text that it would have. */
  readonly halves?: readonly number[]
  /** The texts that the fields should read; empty where only the size of the value is known. */
  readonly texts: readonly string[]
  readonly why: string
  /** Logarithm of the chance of this slip, and of the printed form that it would restore. */
  readonly prior: number
}

/** Seventeen kinds of slip, taken as equally likely. */
const kind = -Math.log(17)
const fields = Math.log(14)
const one = kind - fields
const electrical: readonly number[] = [at.pmax, at.vmp, at.imp, at.voc, at.isc]
const coefficients: readonly number[] = [at.gamma, at.beta, at.alpha]
const sides: readonly number[] = [at.length, at.width]

/** Decimals that such a value is printed with where the record has no other like it. */
const usualDecimals: Readonly<Record<number, number>> = {
  [at.pmax]: 0,
  [at.vmp]: 1,
  [at.imp]: 2,
  [at.voc]: 1,
  [at.isc]: 2,
  [at.efficiency]: 1,
  [at.length]: 0,
  [at.width]: 0,
  [at.gamma]: 2,
  [at.beta]: 2,
  [at.alpha]: 3,
  [at.noct]: 0,
  [at.noctPmax]: 1,
  [at.noctVmp]: 1,
  [at.noctImp]: 2,
}
const alike: readonly (readonly number[])[] = [
  [at.vmp, at.voc, at.noctVmp],
  [at.imp, at.isc, at.noctImp],
  [at.gamma, at.beta],
]

/** What one field says, taken apart. */
interface Place extends Printed {
  readonly place: number
  readonly text: string
  /** Base units in one unit of the text. */
  readonly factor: number
  readonly decimals: number
  /** Logarithm of the chance that all fields like it lost a last zero. */
  readonly more: number
}

/** Slips that would explain what was typed: of one field by its place, and of two that stand in each other's. */
export function candidates(evidence: Evidence, frame: Frame) {
  const known: (Place | undefined)[] = []
  const read = (place: number) => (known[place] ??= placeOf(evidence, place))
  const ofPlace = (p: Place) => [...texts(p), ...units(p, frame, read), ...rows(p), ...computed(p, evidence, frame)]
  return {
    of(place: number): readonly Candidate[] {
      const p = read(place)
      const others = siblings(place, evidence, frame)
      const own = place === at.cells ? cellCounts(frame) : p ? ofPlace(p) : []
      // the same value as siblings print it
      const printed = (one: Candidate) =>
        others.find(({ values }) => near(values[0]!, one.values[0]!))?.texts ?? one.texts
      return [...others, ...own.map((one) => ({ ...one, texts: printed(one) }))]
    },
    swaps: (suspects: readonly number[]): readonly Candidate[] => swaps(read, suspects),
  }
}

const near = (a: number, b: number) => Math.abs(a - b) <= 1e-7 * Math.abs(b)

type Read = (place: number) => Place | undefined

function placeOf(evidence: Evidence, place: number): Place | undefined {
  const reading = evidence.readings[pointers[place]!]
  const printed = reading && takeApart(reading.text)
  if (!printed) return undefined
  const number = Number(printed.number)
  const factor = number !== 0 ? reading.value / number : printed.rest.includes('%') ? 0.01 : 1
  const others = (alike.find((group) => group.includes(place)) ?? []).filter((p) => p !== place)
  const decimals = others.flatMap((p) => {
    const other = evidence.readings[pointers[p]!]
    const parts = other && takeApart(other.text)
    return parts && isAbsolute(other.text) === isAbsolute(reading.text) && parts.number.includes('.')
      ? [decimalsOf(parts.number)]
      : []
  })
  const usual = decimals.length > 0 ? Math.max(...decimals) : usualDecimals[place]!
  const more = -2.3 * Math.max(1, decimals.length)
  return { ...printed, place, text: reading.text, factor, decimals: Math.min(usual, 3), more }
}

const volts: readonly number[] = [at.vmp, at.voc, at.noctVmp]

/** A printed form with another count of decimals than its like is less likely; volts lose a last zero, but not both. */
function form(p: Place, number: string): number {
  const more = decimalsOf(number) - p.decimals
  if (number.endsWith('.')) return -6
  if (more === 0) return 0
  if (more < 0) return volts.includes(p.place) ? (number.includes('.') ? -0.7 : -3) : 1.5 * more
  return p.place === at.alpha
    ? -more
    : volts.includes(p.place)
      ? more * p.more
      : more === 1 && decimalsOf(p.number) > p.decimals
        ? -1
        : -2.5 * more
}

function simple(p: Place, number: string, why: string, chance: number): Candidate {
  const gain = Math.min(p.number.endsWith('.') || volts.includes(p.place) ? 6 : 3, form(p, number) - form(p, p.number))
  const power = p.place === at.pmax && p.factor === 1 ? roundPower(number) - roundPower(p.number) : 0
  return {
    places: [p.place],
    values: [Number(number) * p.factor],
    halves: [0.5 * 10 ** -decimalsOf(number) * p.factor],
    texts: [number + p.rest],
    why,
    prior: chance + gain + power,
  }
}

/** Power classes come in steps of 5 W (98 % of the listed open ratings). */
const roundPower = (number: string) => (Number(number) % 5 === 0 ? 0 : Number(number) < 100 ? -0.5 : -1.5)

const texts = (p: Place): Candidate[] =>
  edits(p.number, p.decimals, volts.includes(p.place) ? 1 : 0)
    .filter(({ kind }) => kind !== 'sign lost' || coefficients.includes(p.place))
    .map((e) =>
      simple(
        p,
        e.number,
        e.kind === 'sign lost'
          ? 'minus sign lost'
          : e.kind === 'point moved'
            ? 'decimal point moved'
            : e.kind === 'point dropped'
              ? 'decimal point dropped'
              : e.kind === 'neighbouring key'
                ? 'neighbouring key hit'
                : e.kind,
        (e.kind === 'sign lost' ? kind - Math.log(2) : one) + e.chance,
      ),
    )

/** The units that ratings are printed in, for those that a prefix may have slipped into. */
const unitOf: Readonly<Record<string, string>> = { kW: 'W', mW: 'W', kV: 'V', mV: 'V', mA: 'A' }

function units(p: Place, { values }: Frame, read: Read): Candidate[] {
  if (sides.includes(p.place)) {
    const now = metres(p.rest)
    const other = read(p.place === at.length ? at.width : at.length)
    const chance = kind - Math.log(6) - (other && other.rest === p.rest ? 2.5 : 0)
    return now === undefined
      ? []
      : (['mm', 'cm', 'm', 'in'] as const).flatMap((unit) => {
          const factor = metres(unit)!
          return factor === now
            ? []
            : [
                {
                  places: [p.place],
                  values: [Number(p.number) * factor],
                  texts: [`${p.number} ${unit}`],
                  why: `${p.rest.trim() || 'mm'} typed for ${unit}`,
                  prior: chance,
                },
              ]
        })
  }
  const number = Number(p.number)
  const ways: Candidate[] = []
  const restore = (n: number, why: string, chance: number, decimals = p.decimals) =>
    ways.push(simple(p, n.toFixed(decimals), why, chance))
  if (p.rest.includes('%') && Math.abs(number) < 1) {
    if (p.place === at.gamma || p.place === at.beta || p.place === at.efficiency)
      restore(100 * number, 'a fraction typed as percent', kind - Math.log(3))
    else if (p.place === at.alpha) restore(100 * number, 'a fraction typed as percent', one - 2)
  }
  if (coefficients.includes(p.place) && p.rest.includes('%')) {
    const of = values[p.place === at.gamma ? at.pmax : p.place === at.beta ? at.voc : at.isc]!
    const unit = p.place === at.gamma ? 'W' : p.place === at.beta ? 'V' : 'A'
    const chance = p.place === at.beta ? kind : kind - 3
    for (const [factor, prefix, less] of [
      [1, '', 0],
      [1e-3, 'm', 1.5],
    ] as const) {
      const share = (100 * number * factor) / of
      if (Number.isFinite(share) && Math.abs(share) >= 0.5 * 10 ** -p.decimals)
        restore(share, `${prefix}${unit}/°C for the module typed as percent`, chance - less)
    }
  }
  if ((p.place === at.imp || p.place === at.isc || p.place === at.noctImp) && p.rest.trim() === 'A' && number >= 30)
    restore(number / 1000, 'milliamperes typed as amperes', kind - Math.log(2))
  const unit = p.rest.trim()
  const plain = electrical.includes(p.place) ? unitOf[unit] : undefined
  if (plain)
    ways.push({
      places: [p.place],
      values: [number],
      halves: [0.5 * 10 ** -decimalsOf(p.number)],
      texts: [`${p.number} ${plain}`],
      why: `${unit} typed for ${plain}`,
      prior: one,
    })
  return ways
}

/** One value from the row at nominal operating temperature: about 0.74 of Pmax, 0.80 of Imp, 0.81 of Isc. */
function rows(p: Place): Candidate[] {
  const share = p.place === at.pmax ? 0.74 : p.place === at.imp ? 0.8 : p.place === at.isc ? 0.81 : 0
  if (share === 0) return []
  const value = Number(p.number) / share
  const numbers =
    p.place === at.pmax ? [String(Math.round(value / 5) * 5)] : [0, -0.01, 0.01].map((off) => (value + off).toFixed(2))
  return numbers
    .filter((number) => Number(number) > 0)
    .map((number, i) => simple(p, number, 'the value at NOCT typed', kind - Math.log(3) - (i === 0 ? 1.5 : 2.5)))
}

/** What the arithmetic of the other fields asks for, for slips that change a value in any other way. */
function computed(p: Place, evidence: Evidence, frame: Frame): Candidate[] {
  if (!electrical.includes(p.place) && p.place !== at.efficiency) return []
  const v = frame.values
  const has = (...places: number[]) => places.every((place) => frame.present[place])
  const ways: Candidate[] = []
  const restore = (n: number, decimals: number, why: string, chance: number) => {
    if (!Number.isFinite(n) || n <= 0 || Number(n.toFixed(decimals)) === 0) return
    // another model's value is near; a value far off has another history, which its digits would show
    const far = Math.abs(Math.log((n * p.factor) / v[p.place]!)) > 0.15 ? 4 : 0
    ways.push(simple(p, n.toFixed(decimals), why, chance - far))
  }
  const other = kind - Math.log(5) - 4.5 + anothersLog(frame.family, evidence, p.place)
  if (p.place === at.pmax && p.factor === 1 && has(at.vmp, at.imp)) {
    const product = v[at.vmp]! * v[at.imp]!
    for (const n of [5 * Math.round(product / 5), Math.round(product)]) restore(n, 0, 'Vmp times Imp', other)
    restore(product, 1, 'Vmp times Imp', other - 1.5)
  }
  if (p.place === at.vmp && has(at.pmax, at.imp)) restore(v[at.pmax]! / v[at.imp]!, p.decimals, 'Pmax over Imp', other)
  if (p.place === at.imp && has(at.pmax, at.vmp)) restore(v[at.pmax]! / v[at.vmp]!, 2, 'Pmax over Vmp', other)
  if (p.place === at.efficiency && has(at.pmax, at.length, at.width))
    restore((0.1 * v[at.pmax]!) / (v[at.length]! * v[at.width]!), 1, 'Pmax over the area', other - 1)
  return ways
}

/** What the siblings carry, for slips that change a value in any other way. */
function siblings(place: number, evidence: Evidence, { family }: Frame): Candidate[] {
  const typed = evidence.readings[pointers[place]!]!
  return (family ? siblingTexts(family, place) : []).flatMap((text) => {
    const meant = family!.siblings.map((one) => one.readings[pointers[place]!]).find((one) => one?.text === text)
    return !meant || meant.value === typed.value
      ? []
      : [{ places: [place], values: [meant.value], texts: [text], why: 'the value of its siblings', prior: one - 3.5 }]
  })
}

function cellCounts({ values, counted }: Frame): Candidate[] {
  if (!counted) return []
  const typed = values[at.cells]!
  const to = (n: number, why: string, prior: number): Candidate => ({
    places: [at.cells],
    values: [n],
    texts: [String(n)],
    why,
    prior,
  })
  return [
    ...[36, 48, 54, 60, 66, 72, 96]
      .filter((n) => n !== typed)
      .map((n) => to(n, 'another usual cell count', kind - Math.log(6) - 3)),
    ...[32, 33, 40, 44, 50, 55, 64, 78, 80, 84, 88, 108, 120, 128]
      .filter((n) => n !== typed)
      .map((n) => to(n, 'another cell count', kind - 8)),
    ...(typed % 2 === 0 ? [to(typed / 2, 'half-cells counted twice', kind - 0.5)] : []),
  ]
}

function swaps(read: Read, suspects: readonly number[]): Candidate[] {
  const pairs = [
    [at.voc, at.vmp, 0],
    [at.isc, at.imp, 0],
    [at.gamma, at.beta, 0],
    [at.vmp, at.imp, -3],
    [at.beta, at.alpha, -3],
  ] as const
  return pairs.flatMap(([a, b, less]) => {
    if (!suspects.includes(a) && !suspects.includes(b)) return []
    const [p, q] = [read(a), read(b)]
    if (!p || !q || p.number === q.number) return []
    const mixed = p.rest.trim() !== q.rest.trim()
    const texts = mixed ? [q.number + p.rest, p.number + q.rest] : [q.text, p.text]
    const values = [Number(q.number) * p.factor, Number(p.number) * q.factor]
    return [{ places: [a, b], values, texts, why: `${nameOf(a)} and ${nameOf(b)} exchanged`, prior: kind + less }]
  })
}

const scratch = new Float64Array(pointers.length)
const steps = new Float64Array(pointers.length)

/** How well the record would hang together with a candidate in place; -Infinity where that is certainly below `floor`. */
export function coherenceWith(frame: Frame, { places, values, halves }: Candidate, floor: number): number {
  scratch.set(frame.values)
  steps.set(frame.halves)
  places.forEach((place, i) => (scratch[place] = values[i]!))
  if (halves) places.forEach((place, i) => (steps[place] = halves[i]!))
  return coherence(frame, scratch, steps, places, floor)
}
