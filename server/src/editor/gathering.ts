import type { Connection } from 'vscode-languageserver'
import { sayIn } from '../wording/phrase.ts'
import type { Client } from './client.ts'
import { inSlices } from './in-slices.ts'
import type { Workspace } from './workspace.ts'

/** With fewer records there is no time to see how far it is. */
export const worthwhile = 500

/** Records that nobody has open, read behind what is asked for, so that families are known. */
export interface Gathering {
  /** Reads these after those before them. */
  add(paths: readonly string[]): Promise<void>
  /** Fulfilled when all so far have been read, or somebody has stopped it. */
  done(): Promise<void>
}

/** @param gathered  called when what was found before may be found otherwise */
export function createGathering(
  { window }: Pick<Connection, 'window'>,
  { bundle }: Pick<Client, 'bundle'>,
  { library, recheckAll }: Pick<Workspace, 'library' | 'recheckAll'>,
  gathered: () => void,
): Gathering {
  let last = Promise.resolve()
  return {
    add: (paths) => (last = last.then(() => read(paths))),
    done: () => last,
  }

  async function read(paths: readonly string[]) {
    const progress = worthwhile <= paths.length ? showing() : null
    let count = 0
    for await (const path of inSlices(paths)) {
      if (progress?.isStopped()) break
      library.gather(path)
      progress?.report(Math.floor((100 * ++count) / paths.length))
    }
    progress?.end()
    recheckAll()
    gathered()
  }

  /** A bar with a button, in a client that has them; one that does not answer keeps nobody waiting. */
  function showing() {
    let [isStopped, isOver] = [false, false]
    let shown = 0
    let report = (_percent: number) => {}
    let end = () => {}
    const asked = window.createWorkDoneProgress().then((bar) => {
      if (isOver) return
      bar.begin(sayIn(bundle)`Wattproof: reading records`, 0, undefined, true)
      bar.token.onCancellationRequested(() => (isStopped = true))
      report = (percent) => {
        if (shown < percent) bar.report((shown = percent))
      }
      end = () => bar.done()
    })
    asked.catch(() => {}) // a client that refuses shows none
    return {
      report: (percent: number) => report(percent),
      isStopped: () => isStopped,
      end() {
        isOver = true
        end()
      },
    }
  }
}
