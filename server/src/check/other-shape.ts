import type { Found } from '../findings/found.ts'
import { reading } from '../records/facts.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Settings } from '../records/records.generated.ts'
import { schemas } from '../records/schemas.generated.ts'
import { movedInto } from '../rows/moved-into.ts'
import { entryAtPointer } from '../text/tree-queries.ts'
import { phrase } from '../wording/phrase.ts'
import { whole } from './sentences.ts'

/** Fields of another shape with the fix that moves them into ours, by the names that the library explains and by those that headings have. */
export function withOtherShapes(
  { kind, tree }: ReadFile,
  found: readonly Found[],
  settings: Settings | undefined,
): readonly Found[] {
  return found.map((one) => {
    if (one.rule.id !== reading.unknownField.id || one.fixes.length > 0) return one
    const entry = entryAtPointer(tree, one.pointer)
    const edits = entry && movedInto(schemas[kind]!, tree, entry, settings?.columns ?? {})
    if (!edits) return one
    const why = whole(phrase`each value in its own field`)
    return { ...one, fixes: [{ pointer: one.pointer, text: edits[0]!.text, why, certainty: 'guess', edits }] }
  })
}
