import type { Finding, RuleFacts } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { Library } from '../library/library.ts'
import type { RecordKind } from '../records/field-info.ts'
import type { Field } from '../records/field.ts'
import { nearest } from '../records/nearest.ts'
import type { ReadFile } from '../records/read-file.ts'
import { setScalar } from '../text/edits.ts'

export const referenceFacts = {
  unknown: {
    id: 'unknown-record',
    severity: 'error',
    reason: 'What cannot be found cannot be checked.',
    source: 'the records of the library',
  },
  ambiguous: {
    id: 'ambiguous-record',
    severity: 'error',
    reason: 'Two records of one id may differ, and which one is meant cannot be told.',
    source: 'the records of the library',
  },
  unused: {
    id: 'unused-record',
    severity: 'hint',
    reason: 'A record that no system names is stock to choose from, or was left over when a system changed.',
    source: 'the systems of the library',
  },
  surface: {
    id: 'unknown-surface',
    severity: 'error',
    reason: 'Without its surface neither fit nor heat nor yield of a panel can be told.',
    source: 'the surfaces of the system',
  },
} as const satisfies Record<string, RuleFacts>

/** Ids in a file that name no record, or several. Settings only lose the energy of a year by it, a system its safety. */
export const unresolvedFindings = (library: Library, file: ReadFile): readonly Finding[] =>
  library.references(file).flatMap(({ kind, field }) => unresolved(library, file, kind, field))

/** A hint on a record that nothing names, in a library that has systems. */
export function unusedFindings(library: Library, file: ReadFile): readonly Finding[] {
  const name = file.fields.get('/name')
  if (!name || library.usesOf(file).length > 0 || !library.hasSystems(file.path)) return []
  return [finding(referenceFacts.unused, name, `No system of this library uses the ${file.kind} ${file.id}.`)]
}

/** Ids in a system that name no record, or several; and surfaces that are not described. */
export function referenceFindings(library: Library, file: ReadFile<'system'>): readonly Finding[] {
  const found = unresolvedFindings(library, file)
  const surfaces = file.record.surfaces.flatMap(({ id }) => id?.value ?? [])
  const panels = file.record.arrays.flatMap((array) => array.panels)
  return [...found, ...panels.flatMap(({ surface }) => (surface ? unknownSurface(file, surface, surfaces) : []))]
}

function unresolved(library: Library, file: ReadFile, kind: RecordKind, field: Field<string>): readonly Finding[] {
  const records = library.byId(kind, field.value, file.path)
  if (records.length === 1) return []
  if (records.length > 1) {
    const related = records.map(({ path }) => ({ span: { start: 0, end: 0 }, message: 'this one', path }))
    const message = `${records.length} ${kind} records are called ${field.value}; give all but one another file name.`
    return [finding(referenceFacts.ambiguous, field, message, { related })]
  }
  const known = library.ofKind(kind, file.path).map(({ id }) => id)
  const facts = { ...referenceFacts.unknown, severity: file.kind === 'library' ? 'warning' : 'error' } as const
  return [notFound(file, facts, field, known, `No ${kind} record is called ${field.value}`)]
}

function unknownSurface(file: ReadFile<'system'>, field: Field<string>, known: readonly string[]): readonly Finding[] {
  if (known.includes(field.value)) return []
  return [notFound(file, referenceFacts.surface, field, known, `No surface of this system is called ${field.value}`)]
}

function notFound(
  file: ReadFile,
  facts: RuleFacts,
  field: Field<string>,
  known: readonly string[],
  message: string,
): Finding {
  const near = nearest(field.value, known)
  const others = known.length > 0 && known.length <= 6 ? `; there are ${known.join(', ')}` : ''
  const end = near ? `; did you mean ${near}?` : `${others}.`
  const corrections = near
    ? [
        {
          pointer: field.pointer,
          text: near,
          why: 'the nearest known id',
          certainty: 'guess' as const,
          edits: [setScalar(file.tree, field.pointer, near)],
        },
      ]
    : []
  return finding(facts, field, `${message}${end}`, { corrections })
}
