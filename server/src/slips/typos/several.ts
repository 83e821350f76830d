import type { Said } from '../../findings/message.ts'
import type { Frame } from '../density/coherence.ts'
import { index, type Evidence } from '../evidence.ts'
import { coefficients, electrical } from '../fields.ts'
import { ofKind, type Candidate } from './candidate.ts'
import type { TypedField, Read } from './typed-field.ts'
import { decimalsOf } from './printed.ts'
import { reason } from './reasons.ts'

/** Slips by which several fields went wrong in one way: another column, another row, another version, another unit. */
export function severalSlips(evidence: Evidence, frame: Frame, read: Read): readonly Candidate[] {
  return [
    ...columns(evidence, frame, read),
    ...rowsShifted(read),
    ...endsExchanged(frame, read),
    ...versions(frame, read),
    ...voltagesAtNoct(frame, read),
    ...rearGain(frame, read),
    ...perFahrenheit(read),
  ]
}

/** One field of several, as it should read. */
interface Part {
  readonly field: TypedField
  readonly number: string
}

/** Estimated: an installer copies a whole column wrongly more rarely than one number. */
const rarer = 1

function together(parts: readonly Part[], why: Said, less: number): Candidate {
  return {
    fields: parts.map(({ field }) => field.field),
    values: parts.map(({ field, number }) => Number(number) * field.factor + field.zero),
    halves: parts.map(({ field, number }) => 0.5 * 10 ** -decimalsOf(number) * field.factor),
    texts: parts.map(({ field, number }) => number + field.rest),
    why,
    prior: ofKind - rarer - less,
  }
}

/** Fields multiplied by a number each, in their own decimals; none where a field is missing. */
function scaled(
  read: Read,
  factors: readonly (readonly [field: number, factor: number])[],
  why: Said,
  less = 0,
): Candidate[] {
  const parts: Part[] = []
  for (const [field, factor] of factors) {
    const p = read(field)
    if (!p) return []
    parts.push({ field: p, number: inDecimals(p, Number(p.number) * factor) })
  }
  return [together(parts, why, less)]
}

/** A number with the decimals that the field has, or one more where a smaller one would lose digits. */
function inDecimals(p: TypedField, n: number): string {
  const decimals = Math.max(p.decimals, decimalsOf(p.number))
  return n.toFixed(p.field === index.pmax && Math.abs(n - Math.round(n)) < 0.05 ? 0 : decimals)
}

const pairs = [
  [index.pmax, index.noctPmax, '/noct/pmax'],
  [index.vmp, index.noctVmp, '/noct/vmp'],
  [index.imp, index.noctImp, '/noct/imp'],
] as const

/** The ratings at NOCT in the place of those at STC: both columns exchanged, or one typed twice, from which the other is lost. */
function columns(evidence: Evidence, { isGlass }: Frame, read: Read): Candidate[] {
  const atStc = scaledToStc(read, isGlass ? 0 : ofFlexible)
  const both = pairs.flatMap(([stc, noct]) => {
    const [p, q] = [read(stc), read(noct)]
    return p && q ? [[p, q] as const] : []
  })
  if (both.length < 3) return atStc
  const further = (['voc', 'isc'] as const).flatMap((name) => {
    const [here, there] = [evidence.readings[`/stc/${name}`], evidence.readings[`/noct/${name}`]]
    return here && there ? [{ field: index[name], here, there }] : []
  })
  if (both.every(([p, q]) => Number(p.number) === Number(q.number))) return atStc
  const exchanged = together(
    both.flatMap(([p, q]) => [
      { field: p, number: q.number },
      { field: q, number: p.number },
    ]),
    reason({ say: 'columnsExchanged' }),
    0,
  )
  return [
    {
      ...exchanged,
      fields: [...exchanged.fields, ...further.map(({ field }) => field)],
      values: [...exchanged.values, ...further.map(({ there }) => there.value)],
      halves: [...exchanged.halves!, ...further.map(({ there }) => there.half)],
      texts: [...exchanged.texts, ...further.map(({ there }) => there.text)],
      also: further.map(({ field, here }) => ({
        pointer: field === index.voc ? '/noct/voc' : '/noct/isc',
        text: here.text,
      })),
    },
    ...atStc,
  ]
}

/** What sheets of silicon print at NOCT over what they print at STC; common practice, no source. */
const atNoct: readonly (readonly [field: number, share: number])[] = [
  [index.pmax, 0.744],
  [index.vmp, 0.93],
  [index.imp, 0.8],
  [index.voc, 0.935],
  [index.isc, 0.81],
]

/** Odds against it where wide margins and the efficiency of the cells look just the same; estimated. */
const ofFlexible = 3

/** All ratings are those at NOCT: those at STC stand nowhere, so that there is no text to offer. */
const scaledToStc = (read: Read, less: number): Candidate[] =>
  scaled(
    read,
    atNoct.map(([field, share]) => [field, 1 / share]),
    reason({ say: 'columnAtNoct' }),
    less,
  ).map((one) => ({ ...one, texts: [] }))

/**
 * Each rating in the row of its neighbour: all five round, or the four below the power. Where what fell out at the end is
 * typed nowhere, the power is the product.
 */
function rowsShifted(read: Read): Candidate[] {
  const all = electrical.flatMap((field) => read(field) ?? [])
  if (all.length < electrical.length) return []
  const why = reason({ say: 'rowsShifted' })
  const found = [all, all.slice(1)].flatMap((rows) =>
    [1, rows.length - 1].map((by) => rows.map((field, i) => ({ field, number: rows[(i + by) % rows.length]!.number }))),
  )
  const [power, ...others] = found[1]!
  const [vmp, imp] = others.map(({ number }) => Number(number))
  const product = { field: power!.field, number: String(5 * Math.round((vmp! * imp!) / 5)) }
  return [...found.map((parts) => together(parts, why, 0)), together([product, ...others], why, 1)]
}

/** Voc and Isc in the rows of Vmp and Imp: both are below those, where neither can be, and their product is Pmax. */
function endsExchanged({ values }: Frame, read: Read): Candidate[] {
  const isBelow = values[index.voc]! < values[index.vmp]! && values[index.isc]! < values[index.imp]!
  const off = (values[index.voc]! * values[index.isc]!) / values[index.pmax]! - 1
  if (!isBelow || !(Math.abs(off) < mostOff)) return []
  const fields = [index.voc, index.vmp, index.isc, index.imp].flatMap((field) => read(field) ?? [])
  const [voc, vmp, isc, imp] = fields
  if (!voc || !vmp || !isc || !imp) return []
  const parts = [voc, vmp, isc, imp].map((field, i, all) => ({ field, number: all[i ^ 1]!.number }))
  return [together(parts, reason({ say: 'endsExchanged' }), 0)]
}

/** How far the product of true ratings is off: six in 1900 of the open ones by 3 %; estimated. */
const mostOff = 0.04

/** Odds against what a framed panel shows as well when its count of cells is wrong, or its power; estimated. */
const ofVersion = 2
const besidePower = 1

/** Two panels in series or in parallel, and the version of the same panel for twice the voltage, which few framed panels have. */
function versions({ isGlass }: Frame, read: Read): Candidate[] {
  const volts = [index.vmp, index.voc]
  const amperes = [index.imp, index.isc]
  const less = isGlass ? ofVersion : 0
  const by = (fields: readonly number[], factor: number) => fields.map((field) => [field, factor] as const)
  return [
    ...scaled(read, by([index.pmax, ...volts], 0.5), reason({ say: 'pairInSeries' })),
    ...scaled(read, by([index.pmax, ...amperes], 0.5), reason({ say: 'pairInParallel' })),
    ...scaled(read, by(volts, 0.5), reason({ say: 'voltagesOfTwo' }), 1),
    ...scaled(read, by(amperes, 0.5), reason({ say: 'currentsOfTwo' }), 1),
    ...scaled(read, [...by(volts, 0.5), ...by(amperes, 2)], reason({ say: 'twiceTheVoltage' }), 0.5 + less),
    ...scaled(read, [...by(volts, 2), ...by(amperes, 0.5)], reason({ say: 'halfTheVoltage' }), 1 + less),
  ]
}

/**
 * Both voltages from the column of NOCT, or Vmp alone, where power and current show what they were. As just that share is
 * chosen that agrees, the chance counts all that could have been (estimated).
 */
function voltagesAtNoct({ values, isGlass }: Frame, read: Read): Candidate[] {
  const share = values[index.pmax]! / (values[index.vmp]! * values[index.imp]!)
  // what sheets of silicon print at 800 W/m2 is 5 to 9 % less; common practice, no source
  if (!(share > 1.04 && share < 1.12)) return []
  const vmp = [index.vmp, share] as const
  return [
    ...scaled(read, [vmp, [index.voc, share]], reason({ say: 'voltagesAtNoct' }), 3.5 + (isGlass ? besidePower : 0)),
    ...scaled(read, [vmp], reason({ say: 'valueAtNoct' }), 4.5),
  ]
}

/** Ratings with light on the back too: power and currents by the share that the printed efficiency lacks. */
function rearGain({ values, halves, present, isGlass }: Frame, read: Read): Candidate[] {
  if (![index.efficiency, index.length, index.width].every((field) => present[field])) return []
  const typed = values[index.pmax]!
  const front = 1000 * values[index.efficiency]! * values[index.length]! * values[index.width]!
  const gain = typed / front
  if (!(gain > 1.04 && gain < 1.35)) return []
  const pmax = front < 50 ? Math.round(front) : 5 * Math.round(front / 5)
  const step = gainSteps.find((one) => Math.abs(pmax * one - typed) <= halves[index.pmax]! + rounding)
  const share = step === undefined ? pmax / typed : 1 / step
  return scaled(
    read,
    [
      [index.pmax, pmax / typed],
      // powers are rounded more than currents
      [index.imp, share],
      [index.isc, share],
    ],
    reason({ say: 'rearGain' }),
    (step === undefined ? Math.log(typed / offSteps) : ofStep) +
      // with the gain few powers are round, and few flexible panels have two sides (estimated)
      (typed % 5 === 0 ? 1 : -1) +
      (isGlass ? 0 : 2),
  ).map((one) => ({ ...one, isComputed: true }))
}

/** Sheets print the gain for 5 to 30 % more light, in steps of 5 %; common practice, no source. */
const gainSteps = [1.05, 1.1, 1.15, 1.2, 1.25, 1.3]
/** Odds against one of them, and watts for which a gain between them is an even chance; estimated. */
const ofStep = 2
const offSteps = 0.65
const rounding = 1e-6

/** All coefficients of a sheet in degrees Fahrenheit, or one of them. */
function perFahrenheit(read: Read): Candidate[] {
  const typed = coefficients.filter((field) => read(field))
  const why = reason({ say: 'perFahrenheit' })
  const all = typed.map((field) => [field, 1.8] as const)
  return [...(typed.length < 2 ? [] : scaled(read, all, why)), ...all.flatMap((one) => scaled(read, [one], why, 3))]
}
