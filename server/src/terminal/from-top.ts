import type { FileReport } from './file-report.ts'
import * as here from './paths.ts'

/**
 * Reports whose paths are from the top of the repository, as services that show them beside a change expect.
 *
 * @param paths  of the system that the paths are of
 */
export const fromTop = (
  files: readonly FileReport[],
  cwd: string,
  top: string,
  { shown, absolute }: Pick<typeof here, 'shown' | 'absolute'> = here,
): readonly FileReport[] =>
  files.map((file) => ({
    ...file,
    path: shown(top, absolute(cwd, file.path)),
    findings: file.findings.map((finding) => ({
      ...finding,
      related: finding.related.map((other) =>
        other.path === undefined ? other : { ...other, path: shown(top, absolute(cwd, other.path)) },
      ),
    })),
  }))
