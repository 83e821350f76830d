import { findingsFromNotes } from '../check/from-notes.ts'
import type { Library } from '../library/library.ts'
import { sheetsBeside, sourceIn, type SheetsBeside } from './beside.ts'
import { reportFile, reportFrom, type FileReport } from './file-report.ts'
import { keptReports } from './kept/kept-reports.ts'
import type { Pack } from './kept/pack.ts'
import { libraryOf } from './load.ts'
import type { Share, Texts } from './share.ts'
import { createTurns } from './turns.ts'
import type { World } from './world.ts'

/** What is to be checked, with everything around it. */
export interface Work {
  readonly texts: Texts
  readonly library: Library
  readonly targets: readonly string[]
  readonly sheets: SheetsBeside
  /** Whether what other threads read of datasheets is kept from run to run. */
  readonly cache: boolean
  /** What is kept of findings from run to run, by one thread alone; null for nothing. */
  readonly pack: Pack | null
}

/** Is given what was found, one file after the other. */
export type Take = (report: FileReport) => void

/**
 * Checks files one by one, or in several threads. The result is the same and in the same order. Each thread reads the whole library,
 * so that two of them need more than twice the memory and gain little: nobody gets them who does not ask.
 */
export async function checkAll(world: World, work: Work, jobs: number, take: Take): Promise<void> {
  const { texts, targets, cache } = work
  const threads = Math.min(jobs, targets.length)
  const { today, bundle, cwd } = world
  let done = 0
  const checked = (count: number) => world.progress('checked', (done += count), targets.length, bundle)
  if (threads <= 1)
    return checkEach(work, world, (report) => {
      checked(1)
      take(report)
    })
  const size = Math.ceil(targets.length / threads)
  const turns = createTurns(take)
  const shares = Array.from({ length: threads }, (_, i) => targets.slice(i * size, (i + 1) * size))
  await Promise.all(
    shares.map(async (share, i) => {
      await world.inThread({ texts, targets: share, cwd, today, cache, bundle }, (reports) => {
        checked(reports.length)
        turns.take(i, reports)
      })
      turns.end(i)
    }),
  )
}

/** What a thread does. */
export async function checkShare(share: Share, world: Pick<World, 'sheets'>, take: Take): Promise<void> {
  const library = libraryOf(share.texts)
  const sheets = sheetsBeside(world, library, share.cache)
  await checkEach({ ...share, library, sheets, pack: null }, share, take)
  sheets.end()
}

async function checkEach(
  { texts, library, targets, sheets, pack }: Omit<Work, 'cache'>,
  { cwd, today, bundle }: Pick<Share, 'cwd' | 'today' | 'bundle'>,
  take: Take,
): Promise<void> {
  const all = new Set(targets)
  const isAsked = (path: string) => all.has(path)
  const fromNotes = findingsFromNotes(library, () => today, isAsked, bundle)
  const kept = pack && keptReports(pack, { library, texts, cwd, today, bundle }, targets.length)
  for (const path of targets) {
    const known = await kept?.report(path, sheets)
    if (known) {
      take(known)
      continue
    }
    const findings = fromNotes(path)
    const source = findings ? null : sourceIn(library, path)
    const beside = await sheets.at(path, source)
    const report = findings
      ? reportFrom(library, path, { findings, accepted: [], brokenSettings: false }, cwd)
      : reportFile(library, path, cwd, { today, bundle, sheetOf: () => beside })
    if (!report) continue
    kept?.keep(path, source, beside, report)
    take(report)
  }
}
