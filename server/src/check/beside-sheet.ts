import type { Correction, Finding, Related } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { Field } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import { readFile } from '../records/read.ts'
import type { Beside } from '../sheets/beside.ts'
import { hold, type Witness } from '../sheets/hold.ts'
import { setScalar } from '../text/edits.ts'
import { applyEdits } from '../text/span.ts'
import { isAccepted } from './acceptances.ts'
import { called } from './doubts.ts'
import { sheetFacts } from './sheet-facts.ts'

/**
 * Holds a panel record against its sheet. What the sheet prints otherwise leads, and the findings that its correction
 * explains away are folded into it; of a value that the sheet itself prints, a finding says so and offers no other.
 *
 * @param found  what rules and arithmetic find in the record
 * @param judge  the same for the record after a correction
 */
export function besideSheet(
  file: ReadFile<'panel'>,
  found: readonly Finding[],
  beside: Beside | undefined,
  judge: (file: ReadFile<'panel'>) => readonly Finding[],
): readonly Finding[] {
  const source = file.fields.get('/datasheet/source')
  if (!source) return found
  const notes = draftNote(file)
  if (!beside) return [...found, ...notes]
  if (beside.state === 'missing')
    return [
      ...found,
      ...notes,
      finding(sheetFacts.missing, source, `${beside.source} is not there, so no value is held against it.`),
    ]
  const { sheet, sha256 } = beside
  if (sheet.problem !== null)
    return [
      ...found,
      ...notes,
      finding(sheetFacts.unreadable, source, `${beside.source} cannot be read: ${sheet.problem}.`),
    ]
  const { fields } = hold(file, sheet)
  const stands = isAccepted(file)
  const unlike = fields
    .filter(({ status }) => status === 'other')
    .map((one) => ({ one, finding: toFinding(file, one) }))
  const open = unlike.filter((u) => !stands(u.finding))
  const all = [...notes, ...replaced(file, sha256), ...unlike.filter((u) => stands(u.finding)).map((u) => u.finding)]
  if (open.length === 0) return [...found.map((one) => vouched(one, fields)), ...all]
  const mended = readFile(
    file.path,
    applyEdits(
      file.tree.text,
      open.flatMap((u) => u.finding.corrections[0]!.edits),
    ),
  ) as ReadFile<'panel'>
  const left = judge(mended)
  const stays = (one: Finding) => left.some(({ rule, pointer }) => rule === one.rule && pointer === one.pointer)
  const gone = found.filter((one) => !stays(one))
  return [
    ...found.filter((one) => stays(one)).map((one) => vouched(one, fields)),
    ...open.map((u, i) =>
      fold(
        file,
        u.finding,
        gone.filter(
          (g) =>
            leadOf(
              g,
              open.map((o) => o.one),
            ) === i,
        ),
      ),
    ),
    ...all,
  ]
}

function toFinding(file: ReadFile<'panel'>, { field, reading, text }: Witness): Finding {
  const { page, label } = reading!
  const correction: Correction = {
    pointer: field.pointer,
    text: text!,
    why: 'as the sheet prints it',
    certainty: 'guess',
    edits: [setScalar(file.tree, field.pointer, text!)],
  }
  const where = label.length > 60 ? `${label.slice(0, 59)}…` : label
  const message = `${called(file.kind, field)}: the sheet prints ${text} (page ${page}${where ? `, "${where}"` : ''}).`
  return finding(sheetFacts.unlike, field, message, { corrections: [correction] })
}

/** The unlike field that a finding speaks of; the first where it speaks of none. */
function leadOf({ pointer, related }: Finding, unlike: readonly Witness[]): number {
  const at = unlike.findIndex(({ field }) => field.pointer === pointer)
  if (at >= 0) return at
  return Math.max(
    0,
    unlike.findIndex(({ field }) => related.some(({ span }) => span.start === field.span.start)),
  )
}

function fold(file: ReadFile<'panel'>, lead: Finding, gone: readonly Finding[]): Finding {
  const places = gone.flatMap((one): readonly Related[] => [
    { span: one.span, message: nameAt(file, one.pointer) },
    ...one.related,
  ])
  const isNew = (place: Related, i: number) =>
    place.span.start !== lead.span.start && places.findIndex((p) => p.span.start === place.span.start) === i
  return { ...lead, related: [...lead.related, ...places.filter(isNew)] }
}

function nameAt(file: ReadFile<'panel'>, pointer: string): string {
  const field = file.fields.get(pointer)
  return field ? called(file.kind, field) : pointer
}

/** What the sheet itself prints is no slip of the hand. */
function vouched(one: Finding, fields: readonly Witness[]): Finding {
  const printed = fields.some(({ field, status }) => field.pointer === one.pointer && status === 'same')
  if (
    !printed ||
    one.severity === 'hint' ||
    (one.corrections.every(({ certainty }) => certainty === 'same') && one.corrections.length > 0)
  )
    return one
  const severity = one.rule === 'likely-slip' ? 'information' : one.severity
  return { ...one, severity, message: `${one.message.replace(/\.$/, '')} (the sheet prints it so).`, corrections: [] }
}

function replaced(file: ReadFile<'panel'>, sha256: string): readonly Finding[] {
  const typed = file.fields.get('/datasheet/sha256') as Field<string> | undefined
  if (!typed || typed.value.toLowerCase() === sha256) return []
  const edits = [setScalar(file.tree, typed.pointer, sha256)]
  const correction: Correction = {
    pointer: typed.pointer,
    text: sha256,
    why: 'the sheet that is there now',
    certainty: 'guess',
    edits,
  }
  return [
    finding(sheetFacts.replaced, typed, 'The sheet is not the one that this record was typed from.', {
      corrections: [correction],
    }),
  ]
}

function draftNote(file: ReadFile<'panel'>): readonly Finding[] {
  const by = file.fields.get('/datasheet/typed_by')
  if (by?.value !== 'sheet') return []
  return [
    finding(
      sheetFacts.draft,
      by,
      'These values were read by a program; look at the sheet, then put your initials here.',
    ),
  ]
}
