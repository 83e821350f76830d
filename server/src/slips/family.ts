import { candidates } from './candidates.ts'
import { frameOf } from './coherence.ts'
import { calibration as calibrated } from './calibration.generated.ts'
import { at, pointers, type Evidence } from './evidence.ts'
import { countsCells, groupOf } from './group.ts'
import type { Mending } from './verdict.ts'

/** Records of a library by what a family has in common, so that siblings are found without looking at all. */
export type FamilyIndex = ReadonlyMap<string, readonly Evidence[]>

/** A value that breaks its family's agreement, and the siblings that it breaks it with. */
export interface FamilySlip extends Mending {
  readonly siblings: readonly Evidence[]
}

/** What the models of one family share, whatever their power class. */
const shared = [at.gamma, at.beta, at.alpha, at.noct, at.cells]
const ratings = [at.pmax, at.voc, at.isc, at.vmp, at.imp]

/** Agreement of one other model may be chance: 0.5 % of true records would alarm; of two it is 0.2 %. */
const enough = 2

export function familyIndex(records: Iterable<Evidence>): FamilyIndex {
  const index = new Map<string, Evidence[]>()
  for (const record of records)
    for (const place of shared) {
      const key = keyWithout(record, place)
      if (key === null) continue
      const others = index.get(key)
      if (others) others.push(record)
      else index.set(key, [record])
    }
  return index
}

/**
 * The shared value that differs in one record alone, where all its other shared values agree with at least two models of
 * other power classes and of the same size, and one slip of the hand leads from theirs to it.
 */
export function familySlip(evidence: Evidence, index: FamilyIndex): FamilySlip | null {
  for (const place of shared) {
    const key = keyWithout(evidence, place)
    const siblings = key === null ? [] : otherModels(evidence, index.get(key) ?? [])
    if (siblings.length < enough) continue
    const meant = valueOf(siblings[0]!, place)!
    if (siblings.some((one) => valueOf(one, place) !== meant) || meant === valueOf(evidence, place)) continue
    const mending = slipTo(evidence, place, meant)
    if (mending) return { ...mending, siblings }
  }
  return null
}

/** Technology and the other four shared values; null where one of them is missing. */
function keyWithout(record: Evidence, left: number): string | null {
  if (valueOf(record, left) === undefined) return null
  const values = shared.filter((place) => place !== left).map((place) => valueOf(record, place))
  return values.includes(undefined) ? null : [left, record.technology, ...values].join()
}

/** Siblings of other power classes, one of each; a copy of the same model proves nothing. */
function otherModels(evidence: Evidence, found: readonly Evidence[]): readonly Evidence[] {
  const byPower = new Map<number, Evidence>()
  for (const other of found) {
    const same = ratings.filter((place) => valueOf(other, place) === valueOf(evidence, place)).length
    const pmax = valueOf(other, at.pmax)
    const copy = same > 2 || pmax === valueOf(evidence, at.pmax)
    if (!copy && pmax !== undefined && near(evidence, other)) byPower.set(pmax, other)
  }
  return [...byPower.values()]
}

/** Same size to 0.4 %, Voc to 4 %, power to 12 %: a step or two of one ladder. */
function near(a: Evidence, b: Evidence): boolean {
  const area = (one: Evidence) => (valueOf(one, at.length) ?? NaN) * (valueOf(one, at.width) ?? NaN)
  const off = (x: number | undefined, y: number | undefined) => Math.abs((x ?? NaN) / (y ?? NaN) - 1)
  return (
    off(area(a), area(b)) <= 0.004 &&
    off(valueOf(a, at.voc), valueOf(b, at.voc)) <= 0.04 &&
    off(valueOf(a, at.pmax), valueOf(b, at.pmax)) <= 0.12
  )
}

function slipTo(evidence: Evidence, place: number, meant: number): Mending | null {
  const group = groupOf(evidence)
  const frame = frameOf(evidence, calibrated[group], countsCells(group))
  const same = (value: number) => Math.abs(value - meant) < 1e-7 * Math.max(1, Math.abs(meant))
  const found = candidates(evidence, frame, [place])
    .filter(({ places, values, texts }) => places.length === 1 && texts.length > 0 && same(values[0]!))
    .sort((a, b) => b.prior - a.prior)[0]
  return found ? { pointer: pointers[place]!, text: found.texts[0]!, why: found.why, certainty: 0.9 } : null
}

const valueOf = (record: Evidence, place: number) => record.readings[pointers[place]!]?.value
