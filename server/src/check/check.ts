import type { Library } from '../library/library.ts'
import type { Checked } from './checked.ts'

/** What the adapters know and the layers below may not ask for. */
export interface Today {
  /** The date, year-month-day. */
  readonly today: string
}

/** Checks one file of a library. The same for the editor and for the command line, to the letter. */
export declare function checkFile(library: Library, path: string, now: Today): Checked
