import type { Said } from '../../findings/message.ts'
import { isSame } from '../../quantities/same.ts'
import { likeTrueRecords, ofField, ofKind, type Candidate } from './candidate.ts'
import type { Frame } from '../density/coherence.ts'
import { isAboveEnd } from './above-end.ts'
import { cellCounts } from './cell-counts.ts'
import { edits, type EditKind } from './edits.ts'
import { index, nameOf, pointers, type Evidence } from '../evidence.ts'
import { anothersLog, siblingTexts } from '../family/family.ts'
import { coefficients, electrical, sides } from '../fields.ts'
import { typedField, simple, volts, type TypedField, type Read } from './typed-field.ts'
import { decimalsOf } from './printed.ts'
import { reason } from './reasons.ts'
import { severalSlips } from './several.ts'
import { unknownReason } from './unknown.ts'
import { isShape, sidesInOtherUnit, sidesMoved, unitSlips } from './unit-slips.ts'

/** Slips that would explain what was typed: of one field by its field, and of two that stand in each other's. */
export function candidates(evidence: Evidence, frame: Frame) {
  const known: (TypedField | undefined)[] = []
  const read = (field: number) => (known[field] ??= typedField(evidence, field))
  const ofPlace = (p: TypedField) => [
    ...texts(p),
    ...unitSlips(p, frame, read),
    ...rows(p, frame),
    ...computed(p, evidence, frame),
  ]
  return {
    of(field: number): readonly Candidate[] {
      const p = read(field)
      const others = siblings(field, evidence, frame)
      const own = field === index.cells ? cellCounts(frame) : p ? ofPlace(p).filter((one) => isShape(one, read)) : []
      if (others.length === 0) return own
      // the same value as siblings print it
      const printed = (one: Candidate) =>
        others.find(({ values }) => isSame(values[0]!, one.values[0]!))?.texts ?? one.texts
      return [...others, ...own.map((one) => ({ ...one, texts: printed(one) }))]
    },
    several: (): readonly Candidate[] => severalSlips(evidence, frame, read),
    /** Slips of two fields at once. */
    ofPairs: (suspects: readonly number[]): readonly Candidate[] => [
      ...swaps(read, suspects),
      ...(suspects.some((field) => sides.includes(field)) ? [...sidesInOtherUnit(read), ...sidesMoved(read)] : []),
    ],
  }
}

/** What each kind of edit is called. */
const reasonOf: Readonly<Record<EditKind, Said>> = {
  'digits swapped': reason({ say: 'digitsSwapped' }),
  'digit dropped': reason({ say: 'digitDropped' }),
  'digit doubled': reason({ say: 'digitDoubled' }),
  'digit added': reason({ say: 'digitAdded' }),
  'neighbouring key': reason({ say: 'neighbouringKey' }),
  'point dropped': reason({ say: 'pointDropped' }),
  'point moved': reason({ say: 'pointMoved' }),
  'sign lost': reason({ say: 'signLost' }),
}

/** Odds against swapped digits, which published lists show too, though less often than `likeTrueRecords`. */
const swapped = 0.85

const texts = (p: TypedField): Candidate[] =>
  edits(p.number, p.decimals, volts.includes(p.field) ? 1 : 0)
    .filter(({ kind }) => kind !== 'sign lost' || coefficients.includes(p.field))
    .map((e) =>
      simple(
        p,
        e.number,
        reasonOf[e.kind],
        (e.kind === 'sign lost' ? ofKind - Math.log(2) : ofField) +
          e.chance -
          (e.kind === 'digits swapped' ? swapped : 0),
      ),
    )

/** What the NOCT row shows of each rating, and how much sheets differ in it; common practice, no source. */
const sharesAtNoct: Readonly<Record<number, { readonly share: number; readonly spread: number }>> = {
  [index.pmax]: { share: 0.74, spread: 0.015 },
  [index.imp]: { share: 0.8, spread: 0.01 },
  [index.isc]: { share: 0.81, spread: 0.01 },
}

/** One value from the row at nominal operating temperature: near its share, or what the arithmetic asks for. */
function rows(p: TypedField, { values, present }: Frame): Candidate[] {
  const known = sharesAtNoct[p.field]
  if (!known) return []
  const { share, spread } = known
  const value = Number(p.number) / share
  const has = (...fields: number[]) => fields.every((field) => present[field])
  const isPower = p.field === index.pmax
  const near = isPower ? [5 * Math.round(value / 5)] : [value, value - 0.01, value + 0.01]
  const asked =
    isPower && p.factor === 1 && has(index.vmp, index.imp)
      ? wattsOf(values[index.vmp]! * values[index.imp]!)
      : p.field === index.imp && has(index.pmax, index.vmp)
        ? [values[index.pmax]! / values[index.vmp]! / p.factor]
        : []
  const texts = new Set([...asked, ...near].map((number) => number.toFixed(isPower ? 0 : 2)))
  return [...texts]
    .filter((number) => Number(number) > 0)
    .map((number, i) => {
      const half = 0.5 * 10 ** -decimalsOf(p.number)
      const off = Number(p.number) / Number(number) - share
      const far = off ** 2 / (2 * (spread ** 2 + (half / Number(number)) ** 2 / 3))
      return simple(p, number, reason({ say: 'valueAtNoct' }), ofKind - Math.log(3) - (i === 0 ? 1.5 : 2.5) - far)
    })
}

/** The class of 5 W that a product of volts and amperes belongs to, and the next watt: small panels come in any. */
const wattsOf = (product: number) =>
  product < 100 ? [Math.round(product)] : [5 * Math.round(product / 5), Math.round(product)]

const operatingPoints = [
  { pmax: index.pmax, vmp: index.vmp, imp: index.imp, overImp: 'overImp', overVmp: 'overVmp' },
  { pmax: index.noctPmax, vmp: index.noctVmp, imp: index.noctImp, overImp: 'overImpAtNoct', overVmp: 'overVmpAtNoct' },
] as const

/** What the arithmetic of the other fields asks for, for slips that change a value in any other way. */
function computed(p: TypedField, evidence: Evidence, frame: Frame): Candidate[] {
  const v = frame.values
  const has = (...fields: number[]) => fields.every((field) => frame.present[field])
  const found: Candidate[] = []
  const restore = (n: number, decimals: number, why: Said, chance: number, nearby = 0.15) => {
    if (!Number.isFinite(n) || n <= 0 || Number(n.toFixed(decimals)) === 0) return
    // another model's value is near; a value far off has another history, which its digits would show
    const far = Math.abs(Math.log((n * p.factor) / v[p.field]!)) > nearby ? 4 : 0
    const one = simple(p, n.toFixed(decimals), why, chance - far)
    // the row at NOCT may be printed in a form of its own, so that its form says nothing against what stands there
    const prior = p.field === index.noctVmp ? Math.min(one.prior, chance - far) : one.prior
    found.push({ ...one, prior, isComputed: true })
  }
  const other = ofAnother(p.field, evidence, frame)
  if (p.field === index.pmax && p.factor === 1 && has(index.vmp, index.imp)) {
    const product = v[index.vmp]! * v[index.imp]!
    restore(
      5 * Math.round(product / 5),
      0,
      reason({ say: 'product' }),
      other + ofClass(Number(p.number), evidence, frame),
    )
    restore(Math.round(product), 0, reason({ say: 'product' }), other)
    restore(product, 1, reason({ say: 'product' }), other - 1.5)
  }
  if (p.field === index.noctPmax && has(index.noctVmp, index.noctImp))
    restore(v[index.noctVmp]! * v[index.noctImp]!, p.decimals, reason({ say: 'productAtNoct' }), other)
  for (const { pmax, vmp, imp, overImp, overVmp } of operatingPoints) {
    // nothing is worked out from what is wrong itself
    if (p.field === vmp && has(pmax, imp) && !isAboveEnd(imp, frame))
      restore(v[pmax]! / v[imp]!, p.decimals, reason({ say: overImp }), other)
    if (p.field === imp && has(pmax, vmp) && !isAboveEnd(vmp, frame))
      restore(v[pmax]! / v[vmp]!, p.decimals, reason({ say: overVmp }), other)
  }
  if (p.field === index.efficiency && has(index.pmax, index.length, index.width)) {
    const outline = (0.1 * v[index.pmax]!) / (v[index.length]! * v[index.width]!)
    // sheets of flexible panels give it of cells, of outlines, of sister models; less than of the outline is no habit (estimated)
    const isLess = !frame.isGlass && 100 * v[index.efficiency]! < outline
    restore(
      outline,
      1,
      reason({ say: 'overArea' }),
      other + (frame.isGlass ? -1 : isLess ? 2 : 1.5),
      isLess ? 0.4 : undefined,
    )
  }
  const side = p.field === index.length ? index.width : p.field === index.width ? index.length : undefined
  if (
    side !== undefined &&
    has(index.pmax, index.efficiency, side) &&
    anothersLog(frame.family, evidence, p.field) > 0
  ) {
    // a share of three digits says about how long it is, but not to the millimetre
    const value = v[index.pmax]! / (1000 * v[index.efficiency]! * v[side]!)
    found.push({ fields: [p.field], values: [value], texts: [], why: unknownReason, prior: other })
  }
  return found
}

/**
 * Framed models come in classes of 5 W, so that another's power is one of few near ones, of which one is what Vmp times Imp asks for: those within 12 % (estimated).
 * True lists hardly show that. A sibling that lends it is counted already.
 */
const ofClass = (watts: number, evidence: Evidence, { family, isGlass }: Frame) =>
  isGlass && watts % 5 === 0 && anothersLog(family, evidence, index.pmax) === 0
    ? Math.max(0, nearValues - Math.log((0.24 * watts) / 5)) + likeTrueRecords
    : 0

/** Logarithm of how many values of another model are near a rating; estimated. */
const nearValues = 4.5

/** One of five ratings has the value of another model. */
const ofAnother = (field: number, evidence: Evidence, { family }: Frame) =>
  ofKind - Math.log(5) - nearValues - likeTrueRecords + anothersLog(family, evidence, field)

/** What the siblings carry, for slips that change a value in any other way. */
function siblings(field: number, evidence: Evidence, frame: Frame): Candidate[] {
  const { family } = frame
  const typed = evidence.readings[pointers[field]!]!
  return (family ? siblingTexts(family, field) : []).flatMap((text) => {
    const meant = family!.siblings.map((one) => one.readings[pointers[field]!]).find((one) => one?.text === text)
    return !meant || meant.value === typed.value
      ? []
      : [
          {
            fields: [field],
            values: [meant.value],
            texts: [text],
            why: reason({ say: 'ofSiblings' }),
            prior: electrical.includes(field) ? ofAnother(field, evidence, frame) : ofField - 3.5 - likeTrueRecords,
          },
        ]
  })
}

/** `Pmax` of a coefficient of it. */
const symbolOf = (field: number) => nameOf(field).split(' ').at(-2)

function swaps(read: Read, suspects: readonly number[]): Candidate[] {
  const pairs = [
    [index.voc, index.vmp, 0],
    [index.isc, index.imp, 0],
    [index.gamma, index.beta, 0],
    [index.vmp, index.imp, -3],
    [index.beta, index.alpha, -3],
  ] as const
  return pairs.flatMap(([a, b, less]) => {
    if (!suspects.includes(a) && !suspects.includes(b)) return []
    const [p, q] = [read(a), read(b)]
    if (!p || !q || p.number === q.number) return []
    const mixed = p.rest.trim() !== q.rest.trim()
    const texts = mixed ? [q.number + p.rest, p.number + q.rest] : [q.text, p.text]
    const values = [Number(q.number) * p.factor, Number(p.number) * q.factor]
    return [
      {
        fields: [a, b],
        values,
        texts,
        why:
          coefficients.includes(a) && coefficients.includes(b)
            ? reason({ say: 'coefficientsExchanged', with: { first: symbolOf(a), second: symbolOf(b) } })
            : reason({ say: 'exchanged', with: { first: nameOf(a), second: nameOf(b) } }),
        prior: ofKind + less,
      },
    ]
  })
}
