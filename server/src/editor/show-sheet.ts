import { infoAt, nameOf } from '../records/info-at.ts'
import type { ReadFile } from '../records/read-file.ts'
import { schemas } from '../records/schemas.generated.ts'
import { hold } from '../sheets/hold.ts'
import type { Reading } from '../sheets/sheet.ts'
import { insertEntry } from '../text/edit-entries.ts'
import { parentPointer } from '../text/pointer.ts'
import { isJson, spelledForJson, spelledScalar } from '../text/spelling.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'
import type { Here } from './here.ts'
import type { SheetAdditionResult, SheetResult, SheetRow } from './protocol.ts'
import { toTextEdit } from './to-protocol.ts'
import { translated, type Bundle } from '../wording/bundle.ts'
import { named, sayIn } from '../wording/phrase.ts'

/** A record beside its sheet, in the order of the record; what the record lacks comes last. */
export function sheetShown({ checked, beside, uriOf, bundle }: Here): SheetResult {
  const say = sayIn(bundle)
  if (checked.kind !== 'panel' || !beside) return null
  const { source } = beside
  if (beside.state === 'missing') return { source, problem: say`${source} is not there.` }
  const { sheet, sha256, path } = beside
  if (sheet.problem !== null) return { source, problem: say`${source} cannot be read: ${named(sheet.problem)}.` }
  const { model, fields, unused } = hold(checked as ReadFile<'panel'>, sheet)
  const typed = fields.map(({ field, status, reading, text }): SheetRow => ({
    ...rowOf(field.pointer, reading, bundle),
    typed: field.text,
    status,
    printed: text ?? reading?.typed ?? null,
  }))
  const lacking = unused.map((reading): SheetRow => ({
    ...rowOf(reading.field, reading, bundle),
    typed: null,
    status: 'not typed',
    printed: reading.typed,
  }))
  const order = [...checked.fields.keys()]
  typed.sort((a, b) => order.indexOf(a.field) - order.indexOf(b.field))
  return { source, file: uriOf(path), sha256, pages: sheet.pages, model, rows: [...typed, ...lacking] }
}

function rowOf(
  field: string,
  reading: Reading | null,
  bundle: Bundle | undefined,
): Pick<SheetRow, 'field' | 'name' | 'label' | 'page' | 'box'> {
  const info = infoAt(schemas.panel!, field)
  return {
    field,
    name: info ? translated(nameOf(info), bundle) : field,
    label: reading?.label ?? '',
    page: reading?.page ?? null,
    box: reading?.box ?? null,
  }
}

/** The edits that add what the sheet prints for a field that the record lacks, with the groups around it. */
export function sheetAddition({ checked, beside, bundle }: Here, field: string): SheetAdditionResult {
  if (checked.kind !== 'panel' || beside?.state !== 'read') return null
  const reading = hold(checked as ReadFile<'panel'>, beside.sheet).unused.find((one) => one.field === field)
  if (!reading) return null
  const added = entryFor(checked.tree, field, reading.typed)
  return added && { ...added, title: sayIn(bundle)`Add ${added.title}, as page ${reading.page} of the sheet prints it` }
}

/** A group or list that is not there yet is written with its field in brackets; null where a list has other entries. */
function entryFor(tree: Tree, field: string, typed: string) {
  let [group, key] = [parentPointer(field), lastStep(field)]
  let title = `${key}: ${typed}`
  let text: string | null = null
  while (group !== '' && nodeAtPointer(tree, group)?.kind !== 'map') {
    const isItem = /^\d+$/.test(lastStep(group))
    if (isItem) group = parentPointer(group)
    if (isItem && nodeAtPointer(tree, group)) return null
    const entry: string = isJson(tree)
      ? `${JSON.stringify(key)}: ${text ?? spelledForJson(typed)}`
      : `${key}: ${text ?? spelledScalar(typed, 'plain', true)}`
    text = isItem ? `[{ ${entry} }]` : `{ ${entry} }`
    key = lastStep(group)
    group = parentPointer(group)
    title = `${key}: ${text}`
  }
  const edit = insertEntry(tree, group, key, text === null ? typed : '0')
  // a scalar would be put in quotes that has brackets
  const written = text === null ? edit : { ...edit, text: edit.text.replace(/: 0(?=\s*$)/, () => `: ${text}`) }
  return { title, edits: [toTextEdit(tree, written)] }
}

const lastStep = (pointer: string) => pointer.slice(pointer.lastIndexOf('/') + 1)
