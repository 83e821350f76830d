import { checkFile, type Today } from '../check/check.ts'
import type { Accepted, Checked } from '../check/checked.ts'
import type { Finding } from '../findings/finding.ts'
import type { Library } from '../library/library.ts'
import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import { notRead, type Unread } from '../records/unread.ts'
import { lineStarts } from '../text/lines.ts'
import { folderOf, shown } from './paths.ts'

/** One checked file as every output format needs it: plain data, so that it can cross to another thread. */
export interface FileReport {
  /** From the current folder, with forward slashes. */
  readonly path: string
  readonly kind: RecordKind | 'folder'
  readonly text: string
  readonly starts: readonly number[]
  /** In file order. */
  readonly findings: readonly Finding[]
  readonly accepted: readonly Accepted[]
  /** From the folder of its library. */
  readonly base: string
  /** Of the findings, then of the accepted ones, where some findings are left out: their names must not change by that. */
  readonly fingerprints?: readonly string[]
  /** Set for settings that could be read only in part. */
  readonly brokenSettings: boolean
}

/** null for a path that the library does not hold. */
export function reportFile(library: Library, path: string, cwd: string, now: Today): FileReport | null {
  const checked = checkFile(library, path, now)
  return checked && reportOf(library, checked, cwd)
}

export function reportOf(library: Library, checked: Checked, cwd: string): FileReport {
  const { path, kind, tree, accepted, readFindings } = checked
  const findings = checked.findings.map((finding) => withShownPlaces(finding, cwd))
  const brokenSettings = kind === 'library' && readFindings().some(({ severity }) => severity === 'error')
  return { ...around(library, path, cwd), kind, ...withStarts(tree.text), findings, accepted, brokenSettings }
}

/** What is found in a record, with places in other files as the person would name them. */
export type Findings = Pick<FileReport, 'findings' | 'accepted' | 'brokenSettings'>

/** The same of a record of which the findings are known without reading it. */
export function reportFrom(library: Library, path: string, found: Findings, cwd: string): FileReport {
  const text = library.text(path) as string
  return { ...around(library, path, cwd), kind: recordOfPath(path)!.kind, ...withStarts(text), ...found }
}

const withStarts = (text: string) => ({ text, starts: lineStarts(text) })

const around = (library: Library, path: string, cwd: string) => ({
  path: shown(cwd, path),
  base: shown(folderOf(library.settings(path)?.path ?? path), path),
})

/** A folder that could not be opened. */
export const reportFolder = (path: string, why: Unread, cwd: string): FileReport => ({
  path: shown(cwd, path),
  kind: 'folder',
  text: '',
  starts: [0],
  findings: [notRead('folder', why)],
  accepted: [],
  base: shown(cwd, path),
  brokenSettings: false,
})

/** Places in other files as the person would name them. */
function withShownPlaces(finding: Finding, cwd: string): Finding {
  const related = finding.related.map((other) =>
    other.path === undefined ? other : { ...other, path: shown(cwd, other.path) },
  )
  return { ...finding, related }
}
