import type { FileReport } from './file-report.ts'
import { formatGithub, summaryTable } from './formats/github.ts'
import { jsonPieces } from './formats/json.ts'
import { formatJunit } from './formats/junit.ts'
import { wholePieces, type Pieces } from './formats/pieces.ts'
import { formatSarif } from './formats/sarif.ts'
import { plain, styleOf, textPieces } from './formats/text.ts'
import { fromTop } from './from-top.ts'
import { repositoryOf } from './git/repository.ts'
import { writeOutput, writeSummary } from './output.ts'
import type { Severity } from '../findings/finding.ts'
import type { Counts } from './severity.ts'
import type { World } from './world.ts'

export interface PrintingOptions {
  readonly format: 'text' | 'json' | 'sarif' | 'github' | 'junit'
  readonly output?: string
  readonly failOn: Severity
  readonly showAccepted?: true
  readonly quiet?: true
}

/** Prints findings as they come, in the format that was asked for. */
export interface Printing {
  file(report: FileReport): void
  end(counts: Counts): Promise<void>
}

/** Written at once [characters]. */
const portion = 16_384

export async function createPrinting(world: World, options: PrintingOptions): Promise<Printing> {
  const { format, output, failOn, showAccepted = false, quiet = false } = options
  const top = (await repositoryOf(world, world.cwd)) ?? world.cwd
  const { GITHUB_STEP_SUMMARY: summary } = world.env
  const page = format === 'github' && summary ? wholePieces((files) => summaryTable(files, world.bundle)) : null
  const styled = () => textPieces(styleOf(world), showAccepted)
  const formats: Readonly<Record<typeof format, () => Pieces>> = {
    text: output === undefined ? styled : () => textPieces({ ...plain, bundle: world.bundle }, showAccepted),
    json: () => jsonPieces(showAccepted),
    sarif: () => wholePieces((files) => formatSarif(files, top)),
    github: () => wholePieces((files) => formatGithub(files, world.bundle)),
    junit: () => wholePieces((files) => formatJunit(files, failOn)),
  }
  const isFromTop = format === 'sarif' || format === 'github'
  const pieces = formats[format]()
  const shown = output === undefined ? null : styled()
  const written: string[] = []
  let waiting = 0
  // of a run whose file cannot be written nothing is shown
  const later: string[] = []
  const out = (text: string) => (quiet || text === '' ? undefined : world.out(text))
  const put = (text: string) => {
    written.push(text)
    waiting += text.length
    // a system call for each of thousands of records takes longer than what it writes
    if (!shown && portion <= waiting) flush()
  }
  const flush = () => {
    out(written.splice(0).join(''))
    waiting = 0
  }

  return {
    file(report) {
      const seen = isFromTop ? fromTop(report, world.cwd, top) : report
      put(pieces.file(seen))
      page?.file(seen)
      if (shown) later.push(shown.file(report))
    },
    async end(counts) {
      put(pieces.end(counts))
      if (!shown) flush()
      if (output !== undefined) await writeOutput(world, output, written.join(''))
      if (shown) out([...later, shown.end(counts)].join(''))
      if (page && summary) await writeSummary(world, summary, page.end(counts))
    },
  }
}
