import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** How far a run is: of what there is to read or to check, how much is done. */
export type Progress = (what: 'read' | 'checked', done: number, total: number, bundle?: Bundle) => void

/** Until then a run is no wait. */
const quietFor = 1000
/** Between two lines: faster than this nobody reads. */
const pause = 100

/** A line that says how far a run is, and goes when something else is written. */
interface ProgressLine {
  readonly show: Progress
  hide(): void
}

/**
 * Writes how far a run is on one line, over and over, and clears it at the end. The first second passes without a word.
 *
 * @param now  milliseconds since the program began
 */
export function createProgress(write: (text: string) => void, now: () => number): ProgressLine {
  let [last, isShown] = [quietFor - pause, false]
  const hide = () => {
    if (isShown) write(clear)
    isShown = false
  }
  return {
    hide,
    show(what, done, total, bundle) {
      if (done >= total) return hide()
      if (now() - last < pause) return
      last = now()
      isShown = true
      const say = sayIn(bundle)
      const said = what === 'read' ? say`read ${done} of ${total} records` : say`checked ${done} of ${total} records`
      write(`${clear}wattproof: ${said}`)
    },
  }
}

const clear = '\r\u001b[K'
