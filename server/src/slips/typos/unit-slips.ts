import type { Said } from '../../findings/message.ts'
import { ofField, ofKind, type Candidate } from './candidate.ts'
import type { Frame } from '../density/coherence.ts'
import { at } from '../evidence.ts'
import { coefficients, electrical, sides } from '../fields.ts'
import { simple, type Place, type Read } from './place.ts'
import { decimalsOf, isAbsolute, metres } from './printed.ts'
import { reason } from './reasons.ts'

/** The units that ratings are printed in, for those that a prefix may have slipped into. */
const unitOf: Readonly<Record<string, string>> = { kW: 'W', mW: 'W', kV: 'V', mV: 'V', mA: 'A' }

/** A number that belongs with another unit than the one typed. How likely each way is, is judged. */
export function unitSlips(p: Place, { values }: Frame, read: Read): Candidate[] {
  if (sides.includes(p.place)) {
    const now = metres(p.rest)
    const other = read(p.place === at.length ? at.width : at.length)
    const chance = ofKind - Math.log(6) - (other && other.rest === p.rest ? 2.5 : 0)
    return now === undefined
      ? []
      : sideUnits.flatMap((unit) => {
          const factor = metres(unit)!
          return factor === now
            ? []
            : [
                {
                  places: [p.place],
                  values: [Number(p.number) * factor],
                  texts: [`${p.number} ${unit}`],
                  why: reason({ say: 'unitForUnit', with: { typed: p.rest.trim() || 'mm', meant: unit } }),
                  prior: chance,
                },
              ]
        })
  }
  if (p.place === at.noct) return temperatures(p)
  const number = Number(p.number)
  const ways: Candidate[] = []
  const restore = (n: number, why: Said, chance: number, decimals = p.decimals) =>
    ways.push(simple(p, n.toFixed(decimals), why, chance))
  if (p.rest.includes('%') && Math.abs(number) < 1) {
    if (p.place === at.gamma || p.place === at.beta || p.place === at.efficiency)
      restore(100 * number, reason({ say: 'fractionAsPercent' }), ofKind - Math.log(3))
    else if (p.place === at.alpha) restore(100 * number, reason({ say: 'fractionAsPercent' }), ofField - 2)
  }
  if (coefficients.includes(p.place) && p.rest.includes('%')) {
    const of = values[p.place === at.gamma ? at.pmax : p.place === at.beta ? at.voc : at.isc]!
    const unit = p.place === at.gamma ? 'W' : p.place === at.beta ? 'V' : 'A'
    const chance = p.place === at.beta ? ofKind : ofKind - 3
    for (const [factor, prefix, less] of [
      [1, '', 0],
      [1e-3, 'm', 1.5],
    ] as const) {
      const share = (100 * number * factor) / of
      if (Number.isFinite(share) && Math.abs(share) >= 0.5 * 10 ** -p.decimals)
        restore(share, reason({ say: 'ofModuleAsPercent', with: { unit: prefix + unit } }), chance - less)
    }
  }
  if ((p.place === at.imp || p.place === at.isc || p.place === at.noctImp) && p.rest.trim() === 'A' && number >= 30)
    restore(number / 1000, reason({ say: 'milliamperes' }), ofKind - Math.log(2))
  const count = values[at.cells]!
  if (p.place === at.beta && isAbsolute(p.text) && count > 1)
    restore(number * count, reason({ say: 'perCell' }), ofKind - 1, decimalsOf((number * count).toPrecision(3)))
  const unit = p.rest.trim()
  const plain = electrical.includes(p.place) ? unitOf[unit] : undefined
  if (plain)
    ways.push({
      places: [p.place],
      values: [number],
      halves: [0.5 * 10 ** -decimalsOf(p.number)],
      texts: [`${p.number} ${plain}`],
      why: reason({ say: 'unitForUnit', with: { typed: unit, meant: plain } }),
      prior: ofField,
    })
  return ways
}

/** Degrees of one scale typed as those of the other. */
function temperatures(p: Place): Candidate[] {
  const number = Number(p.number)
  const typed = p.zero === 0 ? 'C' : 'F'
  const meant = typed === 'C' ? 'F' : 'C'
  // a number of degrees Fahrenheit is said in the unit that was typed, as siblings have it
  const value = typed === 'C' ? Math.round((number - 32) / 1.8) : number
  return [
    {
      places: [p.place],
      values: [value],
      texts: [`${value}${typed === 'C' ? p.rest : ' °C'}`],
      why: reason({ say: 'unitForUnit', with: { typed: `°${typed}`, meant: `°${meant}` } }),
      prior: ofKind - 1,
    },
  ]
}

/** Both sides of a panel in another unit than the one that they share: `46.9` by `21.3` are inches. */
export function sidesInOtherUnit(read: Read): Candidate[] {
  const [length, width] = [read(at.length), read(at.width)]
  const now = length && metres(length.rest)
  if (!length || !width || length.rest !== width.rest || now === undefined) return []
  return sideUnits.flatMap((unit) => {
    const factor = metres(unit)!
    if (factor === now) return []
    const both = [length, width]
    return {
      places: [at.length, at.width],
      values: both.map(({ number }) => Number(number) * factor),
      texts: both.map(({ number }) => `${number} ${unit}`),
      why: reason({ say: 'bothSides', with: { typed: length.rest.trim() || 'mm', meant: unit } }),
      prior: ofKind - Math.log(sideUnits.length - 1),
    }
  })
}

/** The decimal point of both sides moved in the same way: `10.50 m` by `5.60 m`. */
export function sidesMoved(read: Read): Candidate[] {
  const [length, width] = [read(at.length), read(at.width)]
  if (!length || !width || length.rest !== width.rest) return []
  return [1, -1].map((places) => {
    const both = [length, width].map((side) => ({
      side,
      text: (Number(side.number) * 10 ** places).toFixed(Math.max(0, decimalsOf(side.number) - places)),
    }))
    return {
      places: [at.length, at.width],
      values: both.map(({ side, text }) => Number(text) * side.factor),
      texts: both.map(({ side, text }) => text + side.rest),
      why: reason({ say: 'pointMovedOnBoth' }),
      prior: ofKind - 1,
    }
  })
}

/** No panel is so long and narrow that one side is more than so many times the other: common practice, no source. */
const mostOfRatio = 25

/** Whether a side, as a slip would have it, makes a panel with the other one. */
export function isShape({ places: [place], values: [value] }: Candidate, read: Read): boolean {
  const other = place === at.length ? read(at.width) : place === at.width ? read(at.length) : undefined
  if (!other || !value) return true
  const ratio = value / (Number(other.number) * other.factor)
  return ratio <= mostOfRatio && 1 / mostOfRatio <= ratio
}

/** What sheets print the sides of a panel in. */
const sideUnits = ['mm', 'cm', 'm', 'in'] as const
