import type { Finding, Severity } from '../findings/finding.ts'
import { templateOf } from '../findings/words.ts'
import type { Library } from '../library/library.ts'
import type { Field } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { sheetPath } from '../sheets/beside.ts'
import { acceptComments } from '../text/accept-comments.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Bundle } from '../wording/bundle.ts'
import { toFinding } from './in-words.ts'
import { foundAlone } from './panel.ts'
import { severitiesOf } from './severities.ts'
import { isSerious, withoutShared } from './shared-fields.ts'
import type { Today } from './today.ts'

/**
 * What the rules find in a panel record that has no others beside it: short and plain, for it is kept of every panel of a library.
 * null where more is to be done than to say it: what is worth a warning may be a slip, and there may be a fix, an acceptance or a sheet.
 */
export type OwnNote = readonly NotedFinding[] | null

type NotedFinding = readonly [
  rule: string,
  severity: Severity,
  message: string,
  pointer: string,
  start: number,
  end: number,
  related: readonly (readonly [message: string, start: number, end: number])[],
]

export function ownNoteOf(library: Library, file: ReadFile<'panel'>, now: Today): OwnNote {
  try {
    if (file.unread || file.readFindings().length > 0 || isBesidesSheet(file)) return null
    if (nodeAtPointer(file.tree, '/accepted') || acceptComments(file.tree).length > 0) return null
    const severities = severitiesOf(library.settings(file.path)?.record)
    const found = severities(foundAlone(library, file, now.today))
    if (found.some((one) => one.fixes.length > 0 || isSerious(one))) return null
    const said = withoutShared(found).map((one) => toFinding(one, file.kind, now.bundle))
    return said.some(({ trace }) => trace !== undefined) ? null : said.map(noted)
  } catch {
    return null
  }
}

/** Whether it names a sheet that may lie beside it, or was made from one and is a draft. */
function isBesidesSheet({ fields }: ReadFile<'panel'>): boolean {
  const text = (pointer: string) => (fields.get(pointer) as Field<string> | undefined)?.value
  return sheetPath(text('/datasheet/source')) !== null || text('/datasheet/typed_by') === 'sheet'
}

const noted = ({ rule, severity, message, pointer, span, related }: Finding): NotedFinding => [
  rule,
  severity,
  message,
  pointer,
  span.start,
  span.end,
  related.map((place) => [place.message, place.span.start, place.span.end]),
]

const facts = new Map(panelRules.map((rule) => [rule.id, rule]))

/** The findings of a note as they were. */
export const findingsOf = (note: NonNullable<OwnNote>, bundle: Bundle | undefined): readonly Finding[] =>
  note.map(([rule, severity, message, pointer, start, end, related]) => {
    const { reason, source } = facts.get(rule)!
    return {
      rule,
      severity,
      message,
      pointer,
      span: { start, end },
      reason: templateOf(reason, `${rule}/reason`, bundle),
      source,
      related: related.map(([said, from, to]) => ({ span: { start: from, end: to }, message: said })),
      corrections: [],
    }
  })
