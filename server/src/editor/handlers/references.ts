import type { DefinitionLink, DocumentHighlight, Location, Range } from 'vscode-languageserver'
import type { RecordKind } from '../../records/field-info.ts'
import type { ReadFile } from '../../records/read-file.ts'
import type { ReferencePlace } from '../../library/library.ts'
import { entryAtPointer } from '../../text/tree-queries.ts'
import type { Here } from '../here.ts'
import { isWithin } from '../spot.ts'
import { toRange } from '../to-protocol.ts'

/** The id under the cursor. */
export function referenceAt({ library, checked }: Here, offset: number): ReferencePlace | null {
  return library.references(checked).find(({ field }) => isWithin(field.span, offset)) ?? null
}

/** The records meant: by the id under the cursor, or the record itself where the cursor is on its name. */
export function recordsAt(here: Here, offset: number): readonly ReadFile[] {
  const { library, checked, path } = here
  const place = referenceAt(here, offset)
  if (place) return library.byId<RecordKind>(place.kind, place.field.value, path)
  const name = entryAtPointer(checked.tree, '/name')
  const end = name ? (name.value?.span.end ?? name.keySpan.end) : 0
  return name && isWithin({ start: name.keySpan.start, end }, offset) ? [checked] : []
}

export function definition(here: Here, offset: number): DefinitionLink[] | Location[] {
  const place = referenceAt(here, offset)
  if (!place) return []
  const targets = here.library.byId<RecordKind>(place.kind, place.field.value, here.path)
  if (!here.client.definitionLinks) return targets.map((file) => location(here, file))
  const originSelectionRange = toRange(here.checked.tree, place.field.span)
  return targets.map((file) => ({
    originSelectionRange,
    targetUri: here.uriOf(file.path),
    targetRange: toRange(file.tree, { start: 0, end: file.tree.text.length }),
    targetSelectionRange: nameRange(file),
  }))
}

export function references(here: Here, offset: number, withDeclaration: boolean): Location[] {
  const records = recordsAt(here, offset)
  const uses = records.flatMap((file) => here.library.usesOf(file)).map((use) => useLocation(here, use))
  return withDeclaration ? [...records.map((file) => location(here, file)), ...uses] : uses
}

/** The same id elsewhere in the file. */
export function highlights(here: Here, offset: number): DocumentHighlight[] {
  const place = referenceAt(here, offset)
  if (!place) return []
  return here.library
    .references(here.checked)
    .filter(({ kind, field }) => kind === place.kind && field.value === place.field.value)
    .map(({ field }) => ({ range: toRange(here.checked.tree, field.span) }))
}

export const useLocation = ({ uriOf }: Here, { file, field }: ReferencePlace): Location => ({
  uri: uriOf(file.path),
  range: toRange(file.tree, field.span),
})

const location = ({ uriOf }: Here, file: ReadFile): Location => ({ uri: uriOf(file.path), range: nameRange(file) })

/** A record's id is its file name, so its name stands for it in the text. */
export function nameRange({ tree, fields }: ReadFile): Range {
  return toRange(tree, fields.get('/name')?.span ?? { start: 0, end: 0 })
}
