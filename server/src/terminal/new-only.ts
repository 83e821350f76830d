import type { FileReport } from './file-report.ts'
import { fingerprints } from './fingerprint.ts'

/** Without the findings that were there before, by their fingerprints. One whose acceptance is gone is new. */
export function newOnly(now: readonly FileReport[], before: readonly FileReport[]): readonly FileReport[] {
  const known = new Set(before.flatMap((file) => fingerprints(file).slice(0, file.findings.length)))
  return now.map((file) => {
    const all = fingerprints(file)
    const isNew = file.findings.map((_, i) => !known.has(all[i]!))
    return {
      ...file,
      findings: file.findings.filter((_, i) => isNew[i]),
      fingerprints: all.filter((_, i) => i >= file.findings.length || isNew[i]),
    }
  })
}
