import type { Finding } from '../findings/finding.ts'
import type { Rule } from '../findings/rule.ts'
import type { Library } from '../library/library.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { ReadFile } from '../records/read-file.ts'
import { findSlip } from '../slips/find-slip.ts'
import type { Bundle } from '../wording/bundle.ts'
import { relativesAt } from './family.ts'
import { toFinding } from './in-words.ts'
import { inOrder } from './order.ts'
import { findingsOf, ownNoteOf } from './own-note.ts'
import { familyRules } from './panel.ts'
import { kindredOf, noteOf } from './panel-note.ts'
import { unused } from './references.ts'
import { severitiesOf } from './severities.ts'

/**
 * What `checkFile` finds in a panel record that has nothing worth a warning. What concerns the record alone is looked at when
 * the library reads it, what concerns its family in the notes, so that it is not read again for that.
 *
 * @param today    the date, year-month-day; the library must forget its notes when that changes
 * @param isAsked  whether a record will be asked for as well, so that it may be looked at together with one of its kin
 * @returns        null where only `checkFile` can say what there is
 */
export function findingsFromNotes(
  library: Library,
  today: () => string,
  isAsked: (path: string) => boolean,
  bundle?: Bundle,
): (path: string) => readonly Finding[] | null {
  const ownOf = (file: ReadFile<'panel'>) => ownNoteOf(library, file, { today: today(), bundle })
  for (const make of [ownOf, noteOf]) library.note(make)
  /** Whether the family of a panel has nothing to say of it, as long as the library stays as it is. */
  const agrees = new Map<string, boolean>()
  let version = library.version
  return (path) => {
    const what = recordOfPath(path)
    const own = what?.kind === 'panel' ? library.noted(path, ownOf) : null
    if (!what || !own) return null
    if (version !== library.version) agrees.clear()
    version = library.version
    // the notes of a family are at hand together only once: those of a large library are in no such order
    for (const one of agrees.has(path) ? [] : [path, ...library.kinOf({ path })])
      if (!agrees.has(one) && (one === path || (isAsked(one) && library.noted(one, ownOf))))
        agrees.set(one, agreesWithFamily(library, one))
    if (!agrees.get(path)) return null
    const severities = severitiesOf(library.settings(path)?.record)
    const stock = severities(unused(library, { path, ...what }, kindredOf(library.noted(path, noteOf)!).name))
    return inOrder([...findingsOf(own, bundle), ...stock.map((one) => toFinding(one, what.kind, bundle))])
  }
}

/** Whether neither the rules that compare panels nor the slip search find anything. */
function agreesWithFamily(library: Library, path: string): boolean {
  try {
    const note = library.noted(path, noteOf)!
    const { evidence, family, siblings, kin } = relativesAt(library, path, note)
    const record = kindredOf(note)
    return (
      !familyRules.some((rule) => finds(rule, record, { siblings, kin })) &&
      findSlip(evidence, family).kind === 'consistent'
    )
  } catch {
    return false
  }
}

function finds<R, A>(rule: Rule<R, A>, record: R, about: A): boolean {
  const doubts = rule.check(record, about)
  return Array.isArray(doubts) ? doubts.length > 0 : doubts !== null
}
