/** How far a run is: of what there is to read or to check, how much is done. */
export type Progress = (what: 'read' | 'checked', done: number, total: number) => void

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
    show(what, done, total) {
      if (done >= total) return hide()
      if (now() - last < pause) return
      last = now()
      isShown = true
      write(`${clear}wattproof: ${what} ${done} of ${total} records`)
    },
  }
}

const clear = '\r\u001b[K'
