import { wattproof } from '../terminal/run.ts'

interface Shown {
  readonly rule: string
  readonly severity: string
  readonly message: string
  readonly field: string
  readonly correction: { readonly field: string; readonly text: string } | null
}

/** The findings of a folder of samples, by path, as the command line gives them. */
export function checkFolder(folder: string): ReadonlyMap<string, readonly Shown[]> {
  const { files } = JSON.parse(wattproof(['check', folder, '--format', 'json']).out) as {
    files: { path: string; findings: Shown[] }[]
  }
  return new Map(files.map(({ path, findings }) => [path, findings]))
}

export const isSerious = ({ severity }: Shown): boolean => severity === 'error' || severity === 'warning'
