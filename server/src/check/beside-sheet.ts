import { foundAt, type Found } from '../findings/found.ts'
import type { Field } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Beside } from '../sheets/beside.ts'
import type { Witness } from '../sheets/hold.ts'
import { setScalar } from '../text/edits.ts'
import { applyEdits } from '../text/span.ts'
import { accept } from './accept.ts'
import type { Acceptance } from './acceptances.ts'
import { heldOf } from './held.ts'
import { called } from './in-words.ts'
import { placeOf } from './apply-rules.ts'
import type { Reread } from './rereads.ts'
import { named, phrase } from '../wording/phrase.ts'
import { sentence, whole } from './sentences.ts'
import type { Severities } from './severities.ts'
import { sheetFacts } from './sheet-facts.ts'

/** What comparing a record with its sheet needs beside the findings. */
export interface SheetContext {
  readonly beside: Beside | undefined
  readonly acceptances: readonly Acceptance[]
  readonly severities: Severities
  readonly reread: Reread
  /** What is found in the record after a correction. */
  readonly check: (file: ReadFile<'panel'>) => readonly Found[]
}

/**
 * Compares a panel record with its sheet. What the sheet prints otherwise leads, and the findings that its correction
 * explains away are folded into it; of a value that the sheet itself prints, a finding says so and offers no other.
 *
 * @param found  what rules and arithmetic find in the record
 */
export function besideSheet(
  file: ReadFile<'panel'>,
  found: readonly Found[],
  { beside, acceptances, reread, severities, check }: SheetContext,
): readonly Found[] {
  const source = file.fields.get('/datasheet/source')
  if (!source) return found
  const notes = draftNote(file)
  if (!beside) return [...found, ...notes]
  const about = { source: beside.source }
  if (beside.state === 'missing')
    return [...found, ...notes, foundAt(sheetFacts.missing, source, { say: 'missing', with: about })]
  const { sheet, sha256 } = beside
  if (sheet.problem !== null) {
    const said = { say: 'unreadable', with: { ...about, problem: named(sheet.problem) } } as const
    return [...found, ...notes, foundAt(sheetFacts.unreadable, source, said)]
  }
  const { fields } = heldOf(file, beside)!
  const unlike = severities(fields.filter(({ status }) => status === 'other').map((one) => unlikeSheet(file, one)))
  const { open, accepted } = accept(unlike, acceptances)
  const all = [...notes, ...replaced(file, sha256), ...accepted.map((one) => one.found)]
  if (open.length === 0) return [...found.map((one) => vouched(one, fields)), ...all]
  const edits = open.flatMap((one) => one.fixes[0]!.edits)
  const left = check(reread(applyEdits(file.tree.text, edits)) as ReadFile<'panel'>)
  const stays = (one: Found) => left.some(({ rule, pointer }) => rule.id === one.rule.id && pointer === one.pointer)
  const gone = found.filter((one) => !stays(one))
  return [
    ...found.filter(stays).map((one) => vouched(one, fields)),
    ...open.map((one) =>
      foldInto(
        file,
        one,
        gone.filter((g) => leadOf(g, open) === one),
      ),
    ),
    ...all,
  ]
}

function unlikeSheet(file: ReadFile<'panel'>, { field, reading, text }: Witness): Found {
  const { page, label: printed } = reading!
  const fix = {
    pointer: field.pointer,
    text: text!,
    why: whole(phrase`as the sheet prints it`),
    certainty: 'guess' as const,
    edits: [setScalar(file.tree, field.pointer, text!)],
  }
  const label = printed.length > 60 ? `${printed.slice(0, 59)}…` : printed
  const about = { field: called(file.kind, field), text: text!, page }
  return label
    ? foundAt(sheetFacts.unlike, field, { say: 'labelled', with: { ...about, label } }, { fixes: [fix] })
    : foundAt(sheetFacts.unlike, field, { say: 'unlike', with: about }, { fixes: [fix] })
}

/** The finding about the sheet whose field another speaks of; the first where it speaks of none. */
const leadOf = ({ pointer, places }: Found, unlike: readonly Found[]): Found | undefined =>
  unlike.find((one) => one.pointer === pointer) ??
  unlike.find((one) => places.some((place) => place.path === undefined && place.pointer === one.pointer)) ??
  unlike[0]

function foldInto(file: ReadFile<'panel'>, lead: Found, gone: readonly Found[]): Found {
  const places = gone.flatMap((one) => {
    const field = file.fields.get(one.pointer)
    return [field ? placeOf(field) : { pointer: one.pointer, text: one.pointer, span: one.span }, ...one.places]
  })
  const isNew = ({ pointer, path }: Found['places'][number], i: number) =>
    (path !== undefined || pointer !== lead.pointer) &&
    places.findIndex((p) => p.pointer === pointer && p.path === path) === i
  return { ...lead, places: [...lead.places, ...places.filter(isNew)] }
}

/** What the sheet itself prints is no slip of the hand. */
function vouched(one: Found, fields: readonly Witness[]): Found {
  const printed = fields.some(({ field, status }) => field.pointer === one.pointer && status === 'same')
  const isSafe = one.fixes.length > 0 && one.fixes.every(({ certainty }) => certainty === 'same')
  if (!printed || one.severity === 'hint' || isSafe) return one
  const severity = one.rule.id === 'likely-slip' ? 'information' : one.severity
  return { ...one, severity, sentence: sentence({ say: 'printed', with: { claim: one.claim } }), fixes: [] }
}

function replaced(file: ReadFile<'panel'>, sha256: string): readonly Found[] {
  const typed = file.fields.get('/datasheet/sha256') as Field<string> | undefined
  if (!typed || typed.value.toLowerCase() === sha256) return []
  const edits = [setScalar(file.tree, typed.pointer, sha256)]
  const why = whole(phrase`the sheet that is there now`)
  const fix = { pointer: typed.pointer, text: sha256, why, certainty: 'guess', edits } as const
  return [foundAt(sheetFacts.replaced, typed, { say: 'replaced' }, { fixes: [fix] })]
}

function draftNote(file: ReadFile<'panel'>): readonly Found[] {
  const by = file.fields.get('/datasheet/typed_by')
  return by?.value === 'sheet' ? [foundAt(sheetFacts.draft, by, { say: 'draft' })] : []
}
