import type { Finding } from '../findings/finding.ts'
import type { Found } from '../findings/found.ts'
import type { Library } from '../library/library.ts'
import { internalError } from '../records/internal-error.ts'
import { onceEachWhile } from '../records/once-each.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Panel } from '../records/records.generated.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { systemValues } from '../review/system-values.ts'
import { panelValues } from '../values/panel-values.ts'
import type { Value } from '../values/value.ts'
import { accept, complaints, type Match } from './accept.ts'
import { acceptancesIn, type Acceptance } from './acceptances.ts'
import { besideSheet } from './beside-sheet.ts'
import type { Checked } from './checked.ts'
import { relativesOf, type Relatives } from './family.ts'
import { withoutConsequences } from './consequences.ts'
import { fold } from './fold.ts'
import { toFinding } from './in-words.ts'
import { withKeptPromises } from './kept-promises.ts'
import { rulesFound } from './kind-rules.ts'
import { heldOf } from './held.ts'
import { withLoadsInWatts } from './load-in-watts.ts'
import { hasOpenConflict } from './open-conflicts.ts'
import { inOrder } from './order.ts'
import { withOtherShapes } from './other-shape.ts'
import { isFamilyRule, panelRulesFor, type PanelRules } from './panel.ts'
import { readingFound } from './reading.ts'
import { rereads, type Reread } from './rereads.ts'
import { reviewOf, type Review } from './review.ts'
import { ruleNames } from './rule-names.ts'
import { severitiesOf, type Severities } from './severities.ts'
import { sheetFacts } from './sheet-facts.ts'
import { siteFor } from './site.ts'
import { slipIn } from './slip.ts'
import type { Today } from './today.ts'

export type { Today } from './today.ts'

/**
 * Checks one file of a library: read, rules, severities, acceptances, slip, fold, order, words. The same for the editor
 * and for the command line, to the letter. A mistake of our own becomes a finding beside those of reading.
 *
 * @returns null when the library holds no such file
 */
export function checkFile(library: Library, path: string, now: Today): Checked | null {
  const file = library.file(path)
  if (!file) return null
  if (file.unread) return readOnly(file, file.readFindings(), now)
  try {
    return checked(library, file, now)
  } catch (error) {
    const untried = file.readFindings().map((one) => ({ ...one, corrections: [] }))
    return readOnly(file, [...untried, internalError(error)], now)
  }
}

/** A file of which no more than reading is reported. */
function readOnly(file: ReadFile, found: readonly Finding[], { bundle }: Today): Checked {
  const findings = readingFound(found).map((one) => toFinding(one, file.kind, bundle))
  return { ...file, findings: inOrder(findings), accepted: [], review: null, values: () => [] }
}

/** One check of a file, and of what corrections make of it. */
interface Run extends Today {
  readonly relatives: (file: ReadFile<'panel'>) => Relatives
  readonly rules: PanelRules
  /** What the rules find in a panel record. */
  readonly ruleFindings: (file: ReadFile<'panel'>) => readonly Found[]
}

function checked(library: Library, file: ReadFile, today: Today): Checked {
  const relatives = onceEachWhile((one: ReadFile<'panel'>) => relativesOf(library, one))
  const rules = panelRulesFor(library, today)
  const ruleFindings = onceEachWhile((one: ReadFile<'panel'>) => rules.beside(one, relatives(one)))
  const now: Run = { ...today, relatives, rules, ruleFindings }
  const review = reviewOf(library, file, now.years, now.bundle)
  const reread = rereads(file, library.settings(file.path)?.record.currency?.value)
  const { open, accepted } = foundIn(library, file, now, review, reread)
  const kept = withKeptPromises(file, open, (text) => {
    const after = reread(text)
    const mayRemain = (rule: string) => mayFind(after, now, rule)
    let reviewed = after === file ? review : undefined
    const reviewAfter = () => (reviewed === undefined ? (reviewed = reviewOf(library, after, fewestYears)) : reviewed)
    let findings: readonly Found[] | undefined
    return {
      file: after,
      mayRemain,
      findings: () => (findings ??= findingsIn(library, after, now, reviewAfter)),
      found: () => foundIn(library, after, now, reviewAfter(), reread).open,
    }
  })
  const finding = (found: Found) => toFinding(found, file.kind, now.bundle)
  return {
    ...file,
    findings: inOrder(kept.map(finding)),
    accepted: accepted.map(({ found, acceptance }) => ({ finding: finding(found), because: acceptance.because })),
    review,
    values: valuesWhenAsked(library, file, review),
  }
}

/** Weather in which a correction is tried: no rule that makes one asks for the year. */
const fewestYears = 1

/** Whether a rule may find something in a file, before what follows the rules takes time. */
function mayFind(file: ReadFile, now: Run, rule: string): boolean {
  if (file.kind !== 'panel') return true
  if (rule === sheetFacts.unlike.id) {
    const held = heldOf(file as ReadFile<'panel'>, now.sheetOf?.(file.path))
    return held === null || held.fields.some(({ status }) => status === 'other')
  }
  if (!panelRules.some(({ id }) => id === rule)) return true
  const found = (isFamilyRule(rule) ? now.ruleFindings : now.rules.alone)(file as ReadFile<'panel'>)
  return found.some((one) => one.rule.id === rule)
}

/** What the rules alone find in a file. */
const findingsIn = (library: Library, file: ReadFile, now: Run, review: () => Review | null): readonly Found[] =>
  file.kind === 'panel' ? now.ruleFindings(file as ReadFile<'panel'>) : rulesFound(library, file, review())

/** All that is found in a file, and what of it a person let stand. */
function foundIn(
  library: Library,
  file: ReadFile,
  now: Run,
  review: Review | null,
  reread: Reread,
): { readonly open: readonly Found[]; readonly accepted: readonly Match[] } {
  const settings = library.settings(file.path)?.record
  const severities = severitiesOf(settings)
  const acceptances = acceptancesIn(file)
  const read = withLoadsInWatts(file, readingFound(file.readFindings()), review)
  const rest = severities(
    withoutConsequences(file, [...withOtherShapes(file, read, settings), ...rulesFound(library, file, review)]),
  )
  const panel =
    file.kind === 'panel' ? panelFound(file as ReadFile<'panel'>, now, severities, acceptances, reread) : null
  const { open, accepted } = accept([...rest, ...(panel?.open ?? [])], acceptances)
  const all = [...(panel?.accepted ?? []), ...accepted]
  const complained = complaints(acceptances, all, { rules: ruleNames, mayBeUsed: hasOpenConflict(file.tree) })
  return { open: [...open, ...severities(complained)], accepted: all }
}

/** What rules and the slip search find in a panel record, one finding a mistake, and what of it is accepted. */
function panelFound(
  file: ReadFile<'panel'>,
  now: Run,
  severities: Severities,
  acceptances: readonly Acceptance[],
  reread: Reread,
): { readonly open: readonly Found[]; readonly accepted: readonly Match[] } {
  const search = (one: ReadFile<'panel'>) => panelSearched(one, now, severities, acceptancesIn(one), reread)
  const { open, accepted } = panelSearched(file, now, severities, acceptances, reread)
  const checkAgain = (one: ReadFile<'panel'>) => {
    const again = search(one)
    return [...again.open, ...again.accepted.map(({ found }) => found)]
  }
  const beside = now.sheetOf?.(file.path)
  // a severity that is set holds for what the sheet adds, too
  return {
    open: severities(besideSheet(file, open, { beside, acceptances, reread, severities, check: checkAgain })),
    accepted,
  }
}

function panelSearched(
  file: ReadFile<'panel'>,
  now: Run,
  severities: Severities,
  acceptances: readonly Acceptance[],
  reread: Reread,
): { readonly open: readonly Found[]; readonly accepted: readonly Match[] } {
  const relatives = now.relatives(file)
  const found = now.ruleFindings(file)
  const { open, accepted } = accept(severities(found), acceptances)
  const unaccepted = accept(found, acceptances).open
  const rules = (one: ReadFile<'panel'>) => now.rules.beside(one, relatives)
  const context = { rules, severities, unaccepted, reread, nameOf: relatives.nameOf }
  return { open: fold(file, open, slipIn(file, relatives, accepted, now.sheetOf?.(file.path)), context), accepted }
}

/** Made here and not where a file is checked: that would keep alive all that the check had read. */
function valuesWhenAsked(library: Library, file: ReadFile, review: Review | null): () => readonly Value[] {
  let values: readonly Value[] | null = null
  return () => (values ??= valuesOf(library, file, review))
}

function valuesOf(library: Library, file: ReadFile, review: Review | null): readonly Value[] {
  if (file.kind === 'panel') return panelValues(file.record as Panel, siteFor(library, file.path))
  return review ? systemValues(review.system, review.figures) : []
}
