import type { Bundle } from '../wording/bundle.ts'
import type { Beside } from '../sheets/beside.ts'

/** What the adapters know and the layers below may not ask for. */
export interface Today {
  /** The date, year-month-day. */
  readonly today: string
  /** How many years of weather a review works out; as many as it wants where nothing is said. */
  readonly years?: number
  /** The sheet that the panel record at a path names; undefined where it names none or none was looked for. */
  readonly sheetOf?: (path: string) => Beside | undefined
  /** Messages of another language. */
  readonly bundle?: Bundle | undefined
}
