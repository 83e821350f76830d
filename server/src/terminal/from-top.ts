import type { FileReport } from './file-report.ts'
import { absolute, shown } from './paths.ts'

/** Reports whose paths are from the top of the repository, as services that show them beside a change expect. */
export const fromTop = (files: readonly FileReport[], cwd: string, top: string): readonly FileReport[] =>
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
