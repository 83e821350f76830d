import type { FileReport } from './file-report.ts'
import * as here from './paths.ts'

/**
 * A report whose paths are from the top of the repository, as services that show them beside a change expect.
 *
 * @param paths  of the system that the paths are of
 */
export const fromTop = (
  file: FileReport,
  cwd: string,
  top: string,
  { shown, absolute }: Pick<typeof here, 'shown' | 'absolute'> = here,
): FileReport => ({
  ...file,
  path: shown(top, absolute(cwd, file.path)),
  findings: file.findings.map((finding) => ({
    ...finding,
    related: finding.related.map((other) =>
      other.path === undefined ? other : { ...other, path: shown(top, absolute(cwd, other.path)) },
    ),
  })),
})
