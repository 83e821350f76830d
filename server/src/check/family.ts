import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Sibling } from '../rules/about.ts'
import type { Evidence } from '../slips/evidence.ts'
import { familyOf, type Family } from '../slips/family/family.ts'
import { evidenceOf } from './evidence.ts'

/** The panels of a library that belong with one, as rules and the slip search want them. */
export interface Relatives {
  readonly evidence: Evidence
  readonly family: Family | null
  readonly siblings: readonly Sibling[]
  readonly kin: readonly Sibling[]
  /** What another record is called. */
  readonly nameOf: (other: Evidence) => string
}

export function relativesOf(library: Library, file: ReadFile<'panel'>): Relatives {
  const evidence = evidenceOf(file)
  const files = new Map(library.kinOf(file).map((one) => [evidenceOf(one), one] as const))
  const family = familyOf(evidence, [...files.keys()])
  const sibling = ({ path, record }: ReadFile<'panel'>): Sibling => ({ path, record })
  return {
    evidence,
    family,
    siblings: (family?.siblings ?? []).map((one) => sibling(files.get(one)!)),
    kin: [...files.values()].map(sibling),
    nameOf: (other) => titleOf(files.get(other)!),
  }
}

const titleOf = ({ record, id }: ReadFile<'panel'>): string => record.name?.text ?? id
