import type { Library } from '../library/library.ts'
import { reportFile, type FileReport } from './file-report.ts'
import type { Today } from '../check/check.ts'
import type { Beside } from '../sheets/beside.ts'
import { libraryOf } from './load.ts'
import type { Share, Texts } from './share.ts'
import type { World } from './world.ts'

/** What is to be checked, with everything around it. */
export interface Work {
  readonly texts: Texts
  readonly library: Library
  readonly targets: readonly string[]
  readonly sheets: ReadonlyMap<string, Beside>
}

/**
 * Checks files one by one, or in several threads where that pays. The result is the same and in the same order.
 *
 * @param jobs  how many threads; absent: as many as pay
 */
export async function checkAll(
  world: World,
  { texts, library, targets, sheets }: Work,
  jobs?: number,
): Promise<readonly FileReport[]> {
  const threads = Math.min(jobs ?? Math.min(world.processors, Math.floor(targets.length / worthwhile)), targets.length)
  const { cwd, today, bundle } = world
  let done = 0
  const checked = (count: number) => world.progress('checked', (done += count), targets.length, bundle)
  if (threads <= 1) return reports(library, targets, cwd, nowOf({ today, sheets, bundle }), checked)
  const size = Math.ceil(targets.length / threads)
  const shares = Array.from({ length: threads }, (_, i) => ({
    texts,
    targets: targets.slice(i * size, (i + 1) * size),
    cwd,
    today,
    sheets,
    bundle,
  }))
  return (await Promise.all(shares.map((share) => world.inThread(share, checked)))).flat()
}

/** What a thread does. */
export const checkShare = ({ texts, targets, cwd, ...share }: Share, checked: (count: number) => void) =>
  reports(libraryOf(texts), targets, cwd, nowOf(share), checked)

const nowOf = ({ today, sheets, bundle }: Pick<Share, 'today' | 'sheets' | 'bundle'>): Today => ({
  today,
  bundle,
  sheetOf: (path) => sheets.get(path),
})

/** Files for each thread below which starting it costs more than it saves; measured. */
const worthwhile = 1000

function reports(
  library: Library,
  targets: readonly string[],
  cwd: string,
  now: Today,
  checked: (count: number) => void,
): readonly FileReport[] {
  return targets.flatMap((path) => {
    const report = reportFile(library, path, cwd, now) ?? []
    checked(1)
    return report
  })
}
