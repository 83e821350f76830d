import type { FileReport } from '../file-report.ts'
import { count, type Counts } from '../severity.ts'

/** An output format, piece by piece, so that a long one is never held as a whole. */
export interface Pieces {
  file(report: FileReport): string
  /** What follows the last file. */
  end(counts: Counts): string
}

/** A format that has to see all files before it can begin. */
export function wholePieces(format: (files: readonly FileReport[]) => string): Pieces {
  const files: FileReport[] = []
  return {
    file(report) {
      files.push(report)
      return ''
    },
    end: () => format(files),
  }
}

/** All pieces of these files in one text. */
export const allPieces = ({ file, end }: Pieces, files: readonly FileReport[]): string =>
  files.map(file).join('') + end(count(files))
