import type { Library } from '../library/library.ts'
import { reportFile, type FileReport } from './file-report.ts'
import { libraryOf } from './load.ts'
import type { Share, Texts } from './share.ts'
import type { World } from './world.ts'

/**
 * Checks files one by one, or in several threads where that pays. The result is the same and in the same order.
 *
 * @param jobs  how many threads; absent: as many as pay
 */
export async function checkAll(
  world: World,
  { texts, library, targets }: { texts: Texts; library: Library; targets: readonly string[] },
  jobs?: number,
): Promise<readonly FileReport[]> {
  const threads = Math.min(jobs ?? Math.min(world.processors, Math.floor(targets.length / worthwhile)), targets.length)
  const { cwd, today } = world
  if (threads <= 1) return reports(library, targets, cwd, today)
  const size = Math.ceil(targets.length / threads)
  const shares = Array.from({ length: threads }, (_, i) => ({
    texts,
    targets: targets.slice(i * size, (i + 1) * size),
    cwd,
    today,
  }))
  return (await Promise.all(shares.map(world.inThread))).flat()
}

/** What a thread does. */
export const checkShare = ({ texts, targets, cwd, today }: Share) => reports(libraryOf(texts), targets, cwd, today)

/** Files for each thread below which starting it costs more than it saves; measured. */
const worthwhile = 1000

const reports = (library: Library, targets: readonly string[], cwd: string, today: string) =>
  targets.flatMap((path) => reportFile(library, path, cwd, today) ?? [])
