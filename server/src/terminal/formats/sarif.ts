import type { Artifact, ArtifactLocation, Fix, Log, Region, ReportingDescriptor, Result } from 'sarif'
import { homepage, version } from '../../../../package.json'
import { allFacts } from '../../check/facts.ts'
import type { Accepted } from '../../check/checked.ts'
import type { Correction, Finding, Severity } from '../../findings/finding.ts'
import { positionAt } from '../../text/lines.ts'
import type { Span } from '../../text/span.ts'
import type { FileReport } from '../file-report.ts'
import { addressOf, escapedPath, isOnDrive } from '../paths.ts'
import { jsonText } from '../visible.ts'
import { fingerprints } from '../fingerprint.ts'

/** SARIF 2.1.0 (OASIS standard), one run. Places are from the top of the repository, outside of one from the current folder. */
export function formatSarif(files: readonly FileReport[], top: string): string {
  const rules = allFacts.flatMap((group) => group.rules)
  const index = new Map(rules.map(({ id }, i) => [id, i]))
  const around: Around = { index, files: new Map(files.map((file) => [file.path, file])) }
  const results = files.flatMap((file) => {
    const names = fingerprints(file)
    return [
      ...file.findings.map((finding, i) => toResult(finding, file, names[i]!, around)),
      ...file.accepted.map((accepted, i) => suppressed(accepted, file, names[file.findings.length + i]!, around)),
    ]
  })
  const log: Log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Wattproof', version, informationUri: homepage, rules: rules.map(toDescriptor) } },
        columnKind: 'utf16CodeUnits',
        originalUriBaseIds: { '%SRCROOT%': { uri: `${addressOf(top).replace(/\/$/, '')}/` } },
        artifacts: files.map(({ path }): Artifact => ({ location: location(path) })),
        results,
      },
    ],
  }
  return jsonText(log)
}

/** What results are distinguished and placed by. */
interface Around {
  readonly index: ReadonlyMap<string, number>
  /** By their paths. */
  readonly files: ReadonlyMap<string, FileReport>
}

/** In another file the whole file where that was not checked as well, so that its lines are not known. */
function placeOf({ path, span }: Finding['related'][number], file: FileReport, { files }: Around) {
  const other = path === undefined ? file : files.get(path)
  return { artifactLocation: location(path ?? file.path), ...(other && { region: region(other, span) }) }
}

const levels: Readonly<Record<Severity, 'error' | 'warning' | 'note'>> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'note',
}

const toDescriptor = ({
  id,
  severity,
  reason,
  source,
}: (typeof allFacts)[number]['rules'][number]): ReportingDescriptor => ({
  id,
  shortDescription: { text: reason },
  // a reader without a network has the text, and `wattproof explain`
  helpUri: `${homepage}rules#${id}`,
  help: { text: `${reason}\nSource: ${source}\nwattproof explain ${id}` },
  defaultConfiguration: { level: levels[severity] },
})

function toResult(finding: Finding, file: FileReport, fingerprint: string, around: Around): Result {
  const { rule, severity, message, span, related, corrections } = finding
  const ruleIndex = around.index.get(rule)
  return {
    ruleId: rule,
    ...(ruleIndex !== undefined && { ruleIndex }),
    level: levels[severity],
    message: { text: message },
    locations: [{ physicalLocation: { artifactLocation: location(file.path), region: region(file, span, true) } }],
    ...(related.length && {
      relatedLocations: related.map((other, id) => ({
        id,
        message: { text: other.message },
        physicalLocation: placeOf(other, file, around),
      })),
    }),
    partialFingerprints: { 'wattproof/v1': fingerprint },
    ...(corrections.length && { fixes: corrections.map((correction) => toFix(correction, file)) }),
    properties: { severity, field: finding.pointer },
  }
}

const suppressed = ({ finding, because }: Accepted, file: FileReport, fingerprint: string, around: Around): Result => ({
  ...toResult(finding, file, fingerprint, around),
  suppressions: [{ kind: 'inSource', justification: because }],
})

const toFix = ({ text, why, edits }: Correction, file: FileReport): Fix => ({
  description: { text: `${text} (${why})` },
  artifactChanges: [
    {
      artifactLocation: location(file.path),
      replacements: edits.map((edit) => ({
        deletedRegion: region(file, edit.span),
        insertedContent: { text: edit.text },
      })),
    },
  ],
})

/** What lies on another drive has no place from the top. */
const location = (path: string): ArtifactLocation =>
  isOnDrive(path) ? { uri: addressOf(path) } : { uri: escapedPath(path), uriBaseId: '%SRCROOT%' }

function region({ text, starts }: FileReport, span: Span, withSnippet = false): Region {
  const start = positionAt(starts, span.start)
  const end = positionAt(starts, span.end)
  const snippet = withSnippet ? text.slice(span.start, span.end) : ''
  return {
    startLine: start.line + 1,
    startColumn: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
    ...(snippet && { snippet: { text: snippet } }),
  }
}
