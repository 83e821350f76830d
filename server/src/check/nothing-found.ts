import type { Rule } from '../findings/rule.ts'
import type { Library } from '../library/library.ts'
import type { Field } from '../records/field.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Panel } from '../records/records.generated.ts'
import type { FamilyAbout, Kindred, PanelAbout } from '../rules/about.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { offTheLadder } from '../rules/panel/off-the-ladder.ts'
import { uneditedCopy } from '../rules/panel/unedited-copy.ts'
import { unlikeFamily } from '../rules/panel/unlike-family.ts'
import { weightUnlikeSiblings } from '../rules/panel/weight-unlike-siblings.ts'
import { findSlip } from '../slips/find-slip.ts'
import { sheetPath } from '../sheets/beside.ts'
import { acceptComments } from '../text/accept-comments.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import { relativesAt } from './family.ts'
import { kindredOf, noteOf } from './panel-note.ts'
import { isUnused } from './references.ts'
import { siteFor } from './site.ts'

/** The rules that compare a panel with others; all other rules look at nothing but the panel and the settings. */
export const familyRules: readonly Rule<Kindred, FamilyAbout>[] = [
  offTheLadder,
  uneditedCopy,
  unlikeFamily,
  weightUnlikeSiblings,
]

/**
 * Whether nothing is found in a panel record. What concerns the record alone is looked at when the library reads it, what
 * concerns its family in the notes, so that it is not read again for that.
 *
 * @param today  the date, year-month-day; the library must forget its notes when that changes
 * @returns      false too where it is not known; `checkFile` then says what there is
 */
export function nothingFound(library: Library, today: () => string): (path: string) => boolean {
  const isSound = (file: ReadFile<'panel'>) => isSoundAlone(library, file, today())
  for (const make of [isSound, noteOf]) library.note(make)
  return (path) => {
    const what = recordOfPath(path)
    if (what?.kind !== 'panel' || !library.noted(path, isSound)) return false
    try {
      const note = library.noted(path, noteOf)!
      if (isUnused(library, { path, ...what })) return false
      const { evidence, family, siblings, kin } = relativesAt(library, path, note)
      const own = kindredOf(note)
      return (
        !familyRules.some((rule) => finds(rule, own, { siblings, kin })) &&
        findSlip(evidence, family).kind === 'consistent'
      )
    } catch {
      return false
    }
  }
}

/** Nothing in the text, no rule, no acceptance, which could complain, and no sheet to compare with. */
function isSoundAlone(library: Library, file: ReadFile<'panel'>, today: string): boolean {
  try {
    if (file.unread || file.readFindings().length > 0) return false
    const { path, record, tree, fields } = file
    if (sheetPath((fields.get('/datasheet/source') as Field<string> | undefined)?.value) !== null) return false
    if (nodeAtPointer(tree, '/accepted') || acceptComments(tree).length > 0) return false
    const typed = (pointer: string) => (entryAtPointer(tree, pointer) ?? nodeAtPointer(tree, pointer)) !== null
    const settings = library.settings(path)?.record
    const about = { settings, site: siteFor(library, path), today, typed, siblings: [], kin: [] }
    return !panelRules.some((rule) => finds<Panel, PanelAbout & FamilyAbout>(rule, record, about))
  } catch {
    return false
  }
}

function finds<R, A>(rule: Rule<R, A>, record: R, about: A): boolean {
  const doubts = rule.check(record, about)
  return Array.isArray(doubts) ? doubts.length > 0 : doubts !== null
}
