import type { Severity } from '../findings/finding.ts'
import { severities } from '../findings/severities.ts'
import type { FileReport } from './file-report.ts'

export type Counts = Readonly<Record<Severity, number>> & { readonly files: number }

export function count(files: readonly FileReport[]): Counts {
  const counts = { files: files.length, error: 0, warning: 0, information: 0, hint: 0 }
  for (const { findings } of files) for (const { severity } of findings) counts[severity]++
  return counts
}

/** Whether anything was found that is at least as severe. */
export const reaches = (counts: Counts, threshold: Severity) =>
  severities.slice(0, severities.indexOf(threshold) + 1).some((severity) => 0 < counts[severity])

/** `12 files, 2 errors, 1 warning`: a severity without findings is left out, but errors are always counted. */
export function inWords({ files, ...found }: Counts): string {
  const parts = severities.filter((severity) => severity === 'error' || 0 < found[severity])
  return [plural(files, 'file'), ...parts.map((severity) => plural(found[severity], nouns[severity]))].join(', ')
}

/** 1 error, 2 warnings; or nothing. */
export function foundInWords(found: Counts): string {
  const parts = severities.filter((severity) => 0 < found[severity])
  return parts.map((severity) => plural(found[severity], nouns[severity])).join(', ') || 'nothing'
}

const nouns: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  information: 'information',
  hint: 'hint',
}
const plural = (n: number, noun: string) => `${n} ${noun}${n === 1 || noun === nouns.information ? '' : 's'}`
