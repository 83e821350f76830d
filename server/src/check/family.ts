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
  const noted = library.noted(file.path, evidenceOf)
  // what a correction makes of a file is not in the library
  const evidence = noted && library.file(file.path) === file ? noted : evidenceOf(file)
  const paths = new Map<Evidence, string>()
  for (const path of library.kinOf(file)) paths.set(library.noted(path, evidenceOf)!, path)
  const family = familyOf(evidence, [...paths.keys()])
  const panelAt = (path: string) => library.file(path) as ReadFile<'panel'>
  // few rules look at a sibling's record, and most siblings are not read again for one
  const sibling = (path: string): Sibling => ({
    path,
    get record() {
      return panelAt(path).record
    },
  })
  return {
    evidence,
    family,
    siblings: (family?.siblings ?? []).map((one) => sibling(paths.get(one)!)),
    kin: [...paths.values()].map(sibling),
    nameOf: (other) => titleOf(panelAt(paths.get(other)!)),
  }
}

const titleOf = ({ record, id }: ReadFile<'panel'>): string => record.name?.text ?? id
