import { createHash } from 'node:crypto'
import type { Finding, Severity } from '../../findings/finding.ts'
import { severities } from '../../findings/severities.ts'
import { positionAt } from '../../text/lines.ts'
import type { FileReport } from '../file-report.ts'
import { count, inWords } from '../severity.ts'
import { noEscapes, printable, visible } from '../visible.ts'
import { allPieces } from './pieces.ts'
import { plain, textPieces } from './text.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** The runner shows ten annotations of a level for each step and drops the rest without a word. */
const shown = 10

/** Workflow commands, most severe first, then the whole list for the log. Hints are in the list alone. */
export function formatGithub(files: readonly FileReport[], bundle?: Bundle): string {
  const say = sayIn(bundle)
  const all = files.flatMap((file) => file.findings.map((finding) => ({ file, finding })))
  const commands = severities.flatMap((severity) => {
    const level = levels[severity]
    const some = level ? all.filter(({ finding }) => finding.severity === severity) : []
    // notices share their ten with the notes on what was left out
    const limit = level === 'notice' ? shown - 2 : shown
    const rest = some.length - limit
    const left =
      0 < rest
        ? [`::notice title=wattproof::${say`${rest} more of severity ${severity}: see the log of this step`}`]
        : []
    return [
      ...some.slice(0, limit).map(({ file, finding }) => annotation(level as string, file, finding, bundle)),
      ...left,
    ]
  })
  const list = allPieces(textPieces({ ...plain, bundle }, false), files)
  // nothing in the list is a command to the runner, whatever the records say; nobody can write a list that holds its own hash
  const end = createHash('sha256').update(list).digest('hex')
  return [...commands, `::stop-commands::${end}`, `${list}::${end}::\n`].join('\n')
}

/** A table for the page of the run, in Markdown. */
export function summaryTable(files: readonly FileReport[], bundle?: Bundle): string {
  const say = sayIn(bundle)
  const rows = files.flatMap(({ path, starts, findings }) =>
    findings
      .filter(({ severity }) => severity !== 'hint')
      .map(
        ({ severity, rule, message, span }) =>
          `| ${severity} | ${cell(path)}:${positionAt(starts, span.start).line + 1} | ${rule} | ${cell(message)} |`,
      ),
  )
  const table = rows.length
    ? [
        '',
        `| ${say`severity`} | ${say`place`} | ${say`rule`} | ${say`message`} |`,
        '|---|---|---|---|',
        ...rows.slice(0, 500),
      ]
    : []
  return ['### Wattproof', '', inWords(count(files), bundle), ...table, ''].join('\n')
}

const levels: Readonly<Record<Severity, string | null>> = {
  error: 'error',
  warning: 'warning',
  information: 'notice',
  hint: null,
}

function annotation(
  level: string,
  { path, starts }: FileReport,
  { rule, message, span, corrections }: Finding,
  bundle: Bundle | undefined,
): string {
  const start = positionAt(starts, span.start)
  const end = positionAt(starts, span.end)
  const place = {
    file: path,
    line: start.line + 1,
    col: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
    title: rule,
  }
  const properties = Object.entries(place).map(([name, value]) => `${name}=${property(visible(String(value)))}`)
  const fix = corrections[0] ? `\n${sayIn(bundle)`fix:`} ${visible(corrections[0].text)} (${corrections[0].why})` : ''
  return `::${level} ${properties.join(',')}::${data(visible(message) + fix)}`
}

const data = (text: string) => printable(text, noEscapes).replaceAll('%', '%25').replaceAll('\n', '%0A')
const property = (text: string) => data(text).replaceAll(':', '%3A').replaceAll(',', '%2C')
const cell = (text: string) => visible(text).replace(/[\\|<>[\]`*_]/g, '\\$&')
