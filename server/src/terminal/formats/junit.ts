import type { Finding, Severity } from '../../findings/finding.ts'
import { positionAt } from '../../text/lines.ts'
import type { FileReport } from '../file-report.ts'
import { reaches } from '../severity.ts'
import { visible } from '../visible.ts'

/**
 * JUnit XML, which most services of continuous integration read: a suite for each file, a case for each finding, which fails at or
 * above a severity; a file without findings is one case that passes.
 */
export function formatJunit(files: readonly FileReport[], failOn: Severity): string {
  const failures = files.reduce((sum, file) => sum + failing(file, failOn).length, 0)
  const tests = files.reduce((sum, { findings }) => sum + Math.max(1, findings.length), 0)
  const suites = files.map((file) => suite(file, failOn))
  return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="Wattproof" tests="${tests}" failures="${failures}">\n${suites.join('')}</testsuites>\n`
}

const failing = ({ findings }: FileReport, failOn: Severity) => findings.filter((one) => fails(one, failOn))
const fails = ({ severity }: Finding, failOn: Severity) =>
  reaches({ files: 1, error: 0, warning: 0, information: 0, hint: 0, [severity]: 1 }, failOn)

function suite(file: FileReport, failOn: Severity): string {
  const { path, findings } = file
  const cases = findings.map((finding) => testcase(finding, file, fails(finding, failOn)))
  const all = cases.length > 0 ? cases : [`    <testcase classname="${xml(path)}" name="in order"/>\n`]
  return `  <testsuite name="${xml(path)}" tests="${all.length}" failures="${failing(file, failOn).length}">\n${all.join('')}  </testsuite>\n`
}

function testcase(finding: Finding, { path, starts }: FileReport, isFailure: boolean): string {
  const { rule, severity, message, reason, span } = finding
  const { line, character } = positionAt(starts, span.start)
  const place = `${path}:${line + 1}:${character + 1}`
  const said = `${xml(place)}: ${xml(message)} ${xml(reason)}`
  const inside = isFailure
    ? `<failure type="${severity}" message="${xml(message)}">${said}</failure>`
    : `<system-out>${severity}: ${said}</system-out>`
  return `    <testcase classname="${xml(path)}" name="${xml(`${rule}, line ${line + 1}`)}">\n      ${inside}\n    </testcase>\n`
}

const xml = (text: string): string =>
  visible(text).replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign]!)
