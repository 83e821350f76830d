import type { FileReport } from './file-report.ts'
import { fingerprints } from './fingerprint.ts'

/** The fingerprints of what was found in a file. */
export const fingerprintsOf = (file: FileReport): readonly string[] => fingerprints(file).slice(0, file.findings.length)

/**
 * A report without the findings that were there before. One whose acceptance is gone is new.
 *
 * @param known  fingerprints of what was found before
 */
export function newOnly(file: FileReport, known: ReadonlySet<string>): FileReport {
  const all = fingerprints(file)
  const isNew = file.findings.map((_, i) => !known.has(all[i]!))
  return {
    ...file,
    findings: file.findings.filter((_, i) => isNew[i]),
    fingerprints: all.filter((_, i) => i >= file.findings.length || isNew[i]),
  }
}
