import type { Severity } from '../findings/finding.ts'
import { severities } from '../findings/severities.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phrase, phraseInWords, sayIn, type Phrase } from '../wording/phrase.ts'
import type { FileReport } from './file-report.ts'

export type Counts = Readonly<Record<Severity, number>> & { readonly files: number }

export function count(files: readonly FileReport[]): Counts {
  const counting = createCount()
  files.forEach(counting.file)
  return counting.counts
}

/** Counts file by file. */
export function createCount(): { readonly counts: Counts; file(report: FileReport): void } {
  const counts = { files: 0, error: 0, warning: 0, information: 0, hint: 0 }
  return {
    counts,
    file({ findings }) {
      counts.files++
      for (const { severity } of findings) counts[severity]++
    },
  }
}

/** Whether anything was found that is at least as severe. */
export const reaches = (counts: Counts, threshold: Severity) =>
  severities.slice(0, severities.indexOf(threshold) + 1).some((severity) => 0 < counts[severity])

/** `12 files, 2 errors, 1 warning`: a severity without findings is left out, but errors are always counted. */
export function inWords({ files, ...found }: Counts, bundle?: Bundle): string {
  const parts = severities.filter((severity) => severity === 'error' || 0 < found[severity])
  return [counted(files, 'file', bundle), ...parts.map((severity) => counted(found[severity], severity, bundle))].join(
    ', ',
  )
}

/** 1 error, 2 warnings; or nothing. */
export function foundInWords(found: Counts, bundle?: Bundle): string {
  const parts = severities.filter((severity) => 0 < found[severity])
  return parts.map((severity) => counted(found[severity], severity, bundle)).join(', ') || sayIn(bundle)`nothing`
}

const nouns = {
  file: { one: (n) => phrase`${n} file`, many: (n) => phrase`${n} files` },
  error: { one: (n) => phrase`${n} error`, many: (n) => phrase`${n} errors` },
  warning: { one: (n) => phrase`${n} warning`, many: (n) => phrase`${n} warnings` },
  information: { one: (n) => phrase`${n} information`, many: (n) => phrase`${n} information` },
  hint: { one: (n) => phrase`${n} hint`, many: (n) => phrase`${n} hints` },
} satisfies Record<Severity | 'file', Record<'one' | 'many', (n: number) => Phrase>>

const counted = (n: number, what: keyof typeof nouns, bundle?: Bundle) =>
  phraseInWords(nouns[what][n === 1 ? 'one' : 'many'](n), bundle)
