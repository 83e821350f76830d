import { hold } from '../../sheets/hold.ts'
import { insertEntry } from '../../text/edit-entries.ts'
import type { ReadFile } from '../../records/read-file.ts'
import type { Edit } from '../../text/span.ts'
import { nodeAtPointer, pathAtOffset } from '../../text/tree-queries.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { Here } from '../here.ts'

/** What the sheet beside a record can add at an offset: fields of the group that is open there, and its own fingerprint. */
export function fromSheet(
  { checked, beside, bundle }: Here,
  offset: number,
): readonly { title: string; edits: Edit[] }[] {
  if (beside?.state !== 'read' || checked.kind !== 'panel') return []
  const path = pathAtOffset(checked.tree, offset)
  const group = path[0]?.value?.kind === 'map' ? path[0].pointer : ''
  const { fields, tree } = checked
  const add = (key: string, text: string, title: string) =>
    nodeAtPointer(tree, group)?.kind === 'map' ? [{ title, edits: [insertEntry(tree, group, key, text)] }] : []
  if (group === '/datasheet')
    return fields.has('/datasheet/sha256')
      ? []
      : add(
          'sha256',
          `"${beside.sha256}"`,
          sayIn(bundle)`Add the fingerprint of the sheet, so that a replaced sheet is noticed`,
        )
  return hold(checked as ReadFile<'panel'>, beside.sheet).unused.flatMap(({ field, typed, page }) => {
    const key = field.slice(group.length + 1)
    return field.startsWith(`${group}/`) && !key.includes('/')
      ? add(key, typed, sayIn(bundle)`Add ${key}: ${typed}, as page ${page} of the sheet prints it`)
      : []
  })
}
