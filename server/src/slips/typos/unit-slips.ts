import type { Said } from '../../findings/message.ts'
import { ofField, ofKind, type Candidate } from './candidate.ts'
import type { Frame } from '../density/coherence.ts'
import { index } from '../evidence.ts'
import { coefficients, electrical, sides } from '../fields.ts'
import { simple, type TypedField, type Read } from './typed-field.ts'
import { decimalsOf, isAbsolute, metres } from './printed.ts'
import { reason } from './reasons.ts'

/** The units that ratings are printed in, for those that a prefix may have slipped into. */
const unitOf: Readonly<Record<string, string>> = { kW: 'W', mW: 'W', kV: 'V', mV: 'V', mA: 'A' }

/** A number that belongs with another unit than the one typed. How likely each way is, is estimated. */
export function unitSlips(p: TypedField, { values }: Frame, read: Read): Candidate[] {
  if (sides.includes(p.field)) {
    const now = metres(p.rest)
    const other = read(p.field === index.length ? index.width : index.length)
    const chance = ofKind - Math.log(6) - (other && other.rest === p.rest ? 2.5 : 0)
    return now === undefined
      ? []
      : sideUnits.flatMap((unit) => {
          const factor = metres(unit)!
          return factor === now
            ? []
            : [
                {
                  fields: [p.field],
                  values: [Number(p.number) * factor],
                  texts: [`${p.number} ${unit}`],
                  why: takenFor(p.rest, unit, 'unitForUnit'),
                  prior: chance,
                },
              ]
        })
  }
  if (p.field === index.noct) return temperatures(p)
  const number = Number(p.number)
  const found: Candidate[] = []
  const restore = (n: number, why: Said, chance: number, decimals = p.decimals) =>
    found.push(simple(p, n.toFixed(decimals), why, chance))
  if (p.rest.includes('%') && Math.abs(number) < 1) {
    if (p.field === index.gamma || p.field === index.beta || p.field === index.efficiency)
      restore(100 * number, reason({ say: 'fractionAsPercent' }), ofKind - Math.log(3))
    else if (p.field === index.alpha) restore(100 * number, reason({ say: 'fractionAsPercent' }), ofField - 2)
  }
  if (coefficients.includes(p.field) && p.rest.includes('%')) {
    const of = values[p.field === index.gamma ? index.pmax : p.field === index.beta ? index.voc : index.isc]!
    const unit = p.field === index.gamma ? 'W' : p.field === index.beta ? 'V' : 'A'
    const chance = p.field === index.beta ? ofKind : ofKind - 3
    const printed = decimalsOf(p.number)
    for (const [factor, prefix, less] of [
      [1, '', printed < 3 ? fewDecimals : 0],
      [1e-3, 'm', printed < 3 ? 1.5 : 1.5 + fewDecimals],
    ] as const) {
      const share = (100 * number * factor) / of
      if (Number.isFinite(share) && Math.abs(share) >= 0.5 * 10 ** -p.decimals)
        restore(share, reason({ say: 'ofModuleAsPercent', with: { unit: prefix + unit } }), chance - less)
    }
  }
  if (
    (p.field === index.imp || p.field === index.isc || p.field === index.noctImp) &&
    p.rest.trim() === 'A' &&
    number >= 30
  )
    restore(number / 1000, reason({ say: 'milliamperes' }), ofKind - Math.log(2))
  const count = values[index.cells]!
  if (p.field === index.beta && isAbsolute(p.text) && count > 1) {
    const ofAll = (number * count).toFixed(decimalsOf((number * count).toPrecision(3)))
    // a product was printed nowhere, so that its form says nothing
    found.push({ ...simple(p, ofAll, reason({ say: 'perCell' }), 0), prior: ofKind })
  }
  const unit = p.rest.trim()
  const plain = electrical.includes(p.field) ? unitOf[unit] : undefined
  if (plain)
    found.push({
      fields: [p.field],
      values: [number],
      halves: [0.5 * 10 ** -decimalsOf(p.number)],
      texts: [`${p.number} ${plain}`],
      why: reason({ say: 'unitForUnit', with: { typed: unit, meant: plain } }),
      prior: ofField,
    })
  return found
}

/** Volts and amperes a degree are hardly printed with fewer than three decimals, nor their thousandths with as many; estimated. */
const fewDecimals = 1.5

/** A side without a unit is read as millimetres. */
const takenFor = (typed: string, meant: string, say: 'unitForUnit' | 'bothSides'): Said =>
  typed.trim() === ''
    ? reason({ say: say === 'bothSides' ? 'noUnits' : 'noUnit' })
    : reason({ say, with: { typed: typed.trim(), meant } })

/** Degrees of one scale typed as those of the other. */
function temperatures(p: TypedField): Candidate[] {
  const number = Number(p.number)
  const typed = p.zero === 0 ? 'C' : 'F'
  const meant = typed === 'C' ? 'F' : 'C'
  // a number of degrees Fahrenheit is said in the unit that was typed, as siblings have it
  const value = typed === 'C' ? Math.round((number - 32) / 1.8) : number
  return [
    {
      fields: [p.field],
      values: [value],
      texts: [`${value}${typed === 'C' ? p.rest : ' °C'}`],
      why: reason({ say: 'unitForUnit', with: { typed: `°${typed}`, meant: `°${meant}` } }),
      prior: ofKind - 1,
    },
  ]
}

/** Both sides of a panel in another unit than the one that they share: `46.9` by `21.3` are inches. */
export function sidesInOtherUnit(read: Read): Candidate[] {
  const [length, width] = [read(index.length), read(index.width)]
  const now = length && metres(length.rest)
  if (!length || !width || length.rest !== width.rest || now === undefined) return []
  return sideUnits.flatMap((unit) => {
    const factor = metres(unit)!
    if (factor === now) return []
    const both = [length, width]
    return {
      fields: [index.length, index.width],
      values: both.map(({ number }) => Number(number) * factor),
      texts: both.map(({ number }) => `${number} ${unit}`),
      why: takenFor(length.rest, unit, 'bothSides'),
      prior: ofKind - Math.log(sideUnits.length - 1),
    }
  })
}

/** The decimal point of both sides moved in the same way: `10.50 m` by `5.60 m`. How rare that is, is estimated. */
export function sidesMoved(read: Read): Candidate[] {
  const [length, width] = [read(index.length), read(index.width)]
  if (!length || !width || length.rest !== width.rest) return []
  return [1, -1].map((places) => {
    const both = [length, width].map((side) => ({
      side,
      text: (Number(side.number) * 10 ** places).toFixed(Math.max(0, decimalsOf(side.number) - places)),
    }))
    return {
      fields: [index.length, index.width],
      values: both.map(({ side, text }) => Number(text) * side.factor),
      texts: both.map(({ side, text }) => text + side.rest),
      why: reason({ say: 'pointMovedOnBoth' }),
      prior: ofKind - 3,
    }
  })
}

/** No panel is so long and narrow that one side is more than so many times the other: common practice, no source. */
const mostOfRatio = 25

/** Whether a side, as a slip would have it, makes a panel with the other one. */
export function isShape({ fields: [field], values: [value] }: Candidate, read: Read): boolean {
  const other = field === index.length ? read(index.width) : field === index.width ? read(index.length) : undefined
  if (!other || !value) return true
  const ratio = value / (Number(other.number) * other.factor)
  return ratio <= mostOfRatio && 1 / mostOfRatio <= ratio
}

/** What sheets print the sides of a panel in. */
const sideUnits = ['mm', 'cm', 'm', 'in'] as const
