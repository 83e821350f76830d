import { checkFile } from '../check/check.ts'
import type { Checked } from '../check/checked.ts'
import type { Today } from '../check/today.ts'
import { identitiesOf } from '../findings/identity.ts'
import type { Finding } from '../findings/finding.ts'
import type { Library } from '../library/library.ts'
import { byPath } from '../library/in-order.ts'
import { usersOf } from '../library/users-of.ts'
import { recordOfPath } from '../records/kinds.ts'
import { inMarkdown, markdownText } from '../rows/write-rows.ts'
import { changesOf, shareOf } from '../values/changes.ts'
import { valueText } from '../values/value-text.ts'
import { translated, type Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'
import { inSlices } from './in-slices.ts'
import { sharedFolder } from './shared-folder.ts'
import { toPosition } from './to-protocol.ts'

/** One record before and after a change; null where it is not there. */
interface Pair {
  readonly path: string
  readonly was: Checked | null
  readonly is: Checked | null
}

/**
 * What changes of records do, as Markdown: findings that were not there before, and derived values that differ, in the
 * records themselves and in those that depend on them. null where that is nothing.
 *
 * @param before  texts of changed files as they were; null for one that was not there
 */
export async function changesPage(
  now: Library,
  before: ReadonlyMap<string, string | null>,
  today: Today,
  since: string,
): Promise<string | null> {
  const then = now.copy()
  for (const [path, text] of before) {
    if (text === null) then.drop(path)
    else then.put(path, text)
  }
  for await (const path of inSlices(then.paths())) if (recordOfPath(path)?.kind === 'panel') then.gather(path)
  const shared = sharedFolder(then.paths())
  const parts: string[] = []
  for await (const path of inSlices(affectedIn([now, then], [...before.keys()]))) {
    const pair = { path, was: checkFile(then, path, today), is: checkFile(now, path, today) }
    const part = [newFindings(pair, today.bundle), changedValues(pair, today.bundle)].filter((one) => one !== '')
    if (part.length > 0) parts.push([`## ${inMarkdown(path.slice(shared.length))}\n`, ...part].join('\n'))
  }
  const say = sayIn(today.bundle)
  return parts.length > 0 ? [`# ${say`Changes since ${inMarkdown(since)}`}\n`, ...parts].join('\n') : null
}

/** The changed records, then those that depend on them, before or now; all that changed settings govern. */
function affectedIn(libraries: readonly Library[], changed: readonly string[]): readonly string[] {
  const all = new Set<string>()
  for (const library of libraries)
    for (const path of changed) {
      const found = [path, ...usersOf(library, path)]
      const settings = found.filter((one) => recordOfPath(one)?.kind === 'library')
      const governed = library.paths().filter((one) => settings.includes(library.settings(one)?.path ?? ''))
      for (const one of [...found, ...(settings.length > 0 ? governed : [])]) all.add(one)
    }
  const own = [...changed].sort(byPath)
  return [...own, ...[...all].sort(byPath).filter((path) => !changed.includes(path))]
}

function newFindings({ path, was, is }: Pair, bundle: Bundle | undefined): string {
  if (!is) return ''
  // one whose acceptance is gone is new
  const known = new Set(was ? identitiesOf(all(was), path, was.tree.text).slice(0, was.findings.length) : [])
  const names = identitiesOf(all(is), path, is.tree.text)
  const lines = is.findings.filter((_, i) => !known.has(names[i]!)).map((finding) => lineOf(finding, is, bundle))
  return lines.length > 0 ? `${sayIn(bundle)`New findings:`}\n\n${lines.join('')}` : ''
}

const all = ({ findings, accepted }: Checked) => [...findings, ...accepted.map(({ finding }) => finding)]

function lineOf({ severity, message, span, rule }: Finding, { tree }: Checked, bundle: Bundle | undefined): string {
  const line = toPosition(tree, span.start).line + 1
  return `- ${sayIn(bundle)`**${translated(severity, bundle)}**, line ${line}: ${inMarkdown(message)}`} (${rule})\n`
}

function changedValues({ was, is }: Pair, bundle: Bundle | undefined): string {
  const changes = changesOf(was?.values() ?? [], is?.values() ?? [])
  if (changes.length === 0) return ''
  const say = sayIn(bundle)
  const rows = changes.map((change) => {
    const shown = ({ value, text }: typeof change.now) =>
      text === null ? '-' : valueText({ value, unit: change.unit, text }, bundle)
    const isOne = changes.filter(({ label }) => label === change.label).length === 1
    const name = translated(change.label, bundle)
    return [isOne ? name : `${name} (${change.id})`, shown(change.before), shown(change.now), shareOf(change)]
  })
  return markdownText([[say`value`, say`before`, say`now`, say`change`], ...rows])
}
