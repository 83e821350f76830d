import type { Correction, Finding } from '../../findings/finding.ts'
import { positionAt } from '../../text/lines.ts'
import type { FileReport } from '../file-report.ts'
import { fingerprints } from '../fingerprint.ts'
import { jsonText } from '../visible.ts'
import type { Pieces } from './pieces.ts'

/** One document, as `schemas/check-output.schema.json` says; lines and characters from 0 in UTF-16 units. */
export function jsonPieces(showAccepted: boolean): Pieces {
  let isFirst = true
  return {
    file(file) {
      const { path, kind } = file
      const accepted = showAccepted && { accepted: acceptedToJson(file) }
      const json = indented(jsonText({ path, kind, findings: findingsToJson(file), ...accepted }), '    ')
      const before = isFirst ? `${head}[\n` : ',\n'
      isFirst = false
      return before + json
    },
    end: (counts) =>
      `${isFirst ? `${head}[]` : '\n  ]'},\n  "summary": ${indented(jsonText(counts), '  ').trimStart()}\n}\n`,
  }
}

const head = '{\n  "version": 1,\n  "files": '

/** JSON further to the right, without its last line end. */
const indented = (json: string, by: string) => by + json.trimEnd().replaceAll('\n', `\n${by}`)

/** The findings of one file, as every JSON output has them. */
export function findingsToJson(file: FileReport) {
  const names = fingerprints(file)
  return file.findings.map((finding, i) => toJson(finding, file, names[i]!))
}

/** What a person let stand, each with the reason. */
function acceptedToJson(file: FileReport) {
  const names = fingerprints(file).slice(file.findings.length)
  return file.accepted.map(({ finding, because }, i) => ({ ...toJson(finding, file, names[i]!), because }))
}

function toJson(
  { rule, severity, message, pointer, span, corrections }: Finding,
  { starts }: FileReport,
  fingerprint: string,
) {
  return {
    rule,
    severity,
    message,
    field: pointer,
    range: { start: positionAt(starts, span.start), end: positionAt(starts, span.end) },
    correction: corrections[0] ? correctionToJson(corrections[0]) : null,
    fingerprint,
  }
}

const correctionToJson = ({ pointer, text, why, certainty, also }: Correction) => ({
  field: pointer,
  text,
  why,
  certainty,
  ...(also && { also: also.map((other) => ({ field: other.pointer, text: other.text })) }),
})
