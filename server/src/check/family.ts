import type { Library } from '../library/library.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Sibling } from '../rules/about.ts'
import type { Evidence } from '../slips/evidence.ts'
import { familyOf, type Family } from '../slips/family/family.ts'
import { evidenceOf, kindredOf, noteOf, type PanelNote } from './panel-note.ts'

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
  const noted = library.noted(file.path, noteOf)
  // what a correction makes of a file is not in the library
  return relativesAt(library, file.path, noted && library.file(file.path) === file ? noted : noteOf(file))
}

/** The same of a panel of which no more than its note is at hand. */
export function relativesAt(library: Library, path: string, own: PanelNote): Relatives {
  const evidence = evidenceOf(own)
  const others = new Map<Evidence, Other>()
  for (const other of library.kinOf({ path })) {
    const note = library.noted(other, noteOf)!
    others.set(evidenceOf(note), { path: other, note })
  }
  const family = familyOf(evidence, [...others.keys()])
  const sibling = ({ path, note }: Other): Sibling => ({ path, record: kindredOf(note) })
  return {
    evidence,
    family,
    siblings: (family?.siblings ?? []).map((one) => sibling(others.get(one)!)),
    kin: [...others.values()].map(sibling),
    nameOf: (other) => titleOf(others.get(other)!),
  }
}

interface Other {
  readonly path: string
  readonly note: PanelNote
}

const titleOf = ({ path, note }: Other): string => kindredOf(note).name?.text ?? recordOfPath(path)!.id
