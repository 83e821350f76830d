import { foundAt, type Found, type Speaker } from '../findings/found.ts'
import type { Library } from '../library/library.ts'
import type { RecordKind } from '../records/field-info.ts'
import type { Field } from '../records/field.ts'
import { recordOfPath } from '../records/kinds.ts'
import { nearest } from '../records/nearest.ts'
import type { ReadFile } from '../records/read-file.ts'
import { setScalar } from '../text/edits.ts'
import type { Tree } from '../text/tree.ts'
import { named, phrase } from '../wording/phrase.ts'
import { whole } from './sentences.ts'

export const referenceFacts = {
  unknown: {
    id: 'unknown-record',
    severity: 'error',
    reason: 'What cannot be found cannot be checked.',
    source: 'the records of the library',
    messages: {
      unknown: 'No {kind} record is called {id}',
      near: 'No {kind} record is called {id}; did you mean {near}?',
      others: 'No {kind} record is called {id}; there are {others}',
    },
  },
  ambiguous: {
    id: 'ambiguous-record',
    severity: 'error',
    reason: 'Two records of one id may differ, and nothing says which one is meant.',
    source: 'the records of the library',
    messages: { ambiguous: '{count} {kind} records are called {id}; give all but one another file name' },
  },
  unused: {
    id: 'unused-record',
    severity: 'hint',
    reason: 'A record that no system names is stock to choose from, or was left over when a system changed.',
    source: 'the systems of the library',
    messages: { unused: 'No system of this library uses the {kind} {id}' },
  },
  surface: {
    id: 'unknown-surface',
    severity: 'error',
    reason: 'Without its surface neither fit nor heat nor yield of a panel can be calculated.',
    source: 'the surfaces of the system',
    messages: {
      unknown: 'No surface of this system is called {id}',
      near: 'No surface of this system is called {id}; did you mean {near}?',
      others: 'No surface of this system is called {id}; there are {others}',
    },
  },
} as const satisfies Record<string, Speaker>

/** Ids in a file that name no record, or several. Settings only lose the energy of a year by it, a system its safety. */
export const unresolved = (library: Library, file: ReadFile): readonly Found[] =>
  library.references(file).flatMap(({ kind, field }) => unresolvedId(library, file, kind, field))

/** A hint on a record that nothing names, in a library that has systems. */
export function unused(
  library: Library,
  file: Pick<ReadFile, 'path' | 'kind' | 'id'>,
  name: Field<unknown> | undefined,
): readonly Found[] {
  if (!name || !isUnused(library, file)) return []
  return [foundAt(referenceFacts.unused, name, { say: 'unused', with: { kind: named(file.kind), id: file.id } })]
}

const isUnused = (library: Library, file: Pick<ReadFile, 'path' | 'kind' | 'id'>): boolean =>
  library.hasSystems(file.path) && library.usesOf(file).length === 0

/** Ids in a system that name no record, or several; and surfaces that are not described. */
export function systemReferences(library: Library, file: ReadFile<'system'>): readonly Found[] {
  const found = unresolved(library, file)
  const { surfaces, arrays } = file.record
  // one of them may be called so
  if (surfaces.some(({ id }) => !id) || isTwice(file.tree, 'surfaces')) return found
  const known = surfaces.flatMap(({ id }) => id?.value ?? [])
  const panels = arrays.flatMap((array) => array.panels)
  return [...found, ...panels.flatMap(({ surface }) => (surface ? unknownSurface(file, surface, known) : []))]
}

const isTwice = ({ root }: Tree, name: string): boolean =>
  root?.kind === 'map' && root.entries.filter(({ key }) => key === name).length > 1

function unresolvedId(library: Library, file: ReadFile, kind: RecordKind, field: Field<string>): readonly Found[] {
  const records = library.byId(kind, field.value, file.path)
  if (records.length === 1) return []
  if (records.length > 1) {
    const places = records.map(({ path }) => ({ pointer: '', text: 'this one', span: { start: 0, end: 0 }, path }))
    const said = { say: 'ambiguous', with: { count: records.length, kind: named(kind), id: field.value } } as const
    return [foundAt(referenceFacts.ambiguous, field, said, { places })]
  }
  const known = library.ofKind(kind, file.path).map(({ id }) => id)
  const severity = file.kind === 'library' ? 'warning' : 'error'
  return [notFound(file, { ...referenceFacts.unknown, severity }, field, known, kind)]
}

function unknownSurface(file: ReadFile<'system'>, field: Field<string>, known: readonly string[]): readonly Found[] {
  if (known.includes(field.value)) return []
  return [notFound(file, referenceFacts.surface, field, known, null)]
}

function notFound(
  file: ReadFile,
  facts: Speaker,
  field: Field<string>,
  known: readonly string[],
  kind: RecordKind | null,
): Found {
  const about = { kind: kind ? named(kind) : null, id: field.value }
  // one with a quote in it is itself mistyped
  const ids = known.filter((id) => !/["']/.test(id))
  const asFile = (recordOfPath(field.value) ?? recordOfPath(`${field.value}.yaml`))?.id
  const near = ids.find((id) => id === asFile) ?? nearest(field.value, ids)
  if (near) {
    const edits = [setScalar(file.tree, field.pointer, near)]
    const why = whole(phrase`the nearest known id`)
    const fix = { pointer: field.pointer, text: near, why, certainty: 'guess', edits } as const
    const found = foundAt(facts, field, { say: 'near', with: { ...about, near } }, { fixes: [fix] })
    return { ...found, sentence: whole(found.claim) }
  }
  const others = { list: known }
  return known.length > 0 && known.length <= 6
    ? foundAt(facts, field, { say: 'others', with: { ...about, others } })
    : foundAt(facts, field, { say: 'unknown', with: about })
}
