import type { Beside } from '../sheets/beside.ts'
import type { Checked } from '../check/checked.ts'
import type { Library } from '../library/library.ts'
import type { Bundle } from '../wording/bundle.ts'
import type { Client } from './client.ts'

/** Everything that a feature may look at to answer about one file. */
export interface Here {
  /** The words of another language; none for English. */
  readonly bundle?: Bundle | undefined
  readonly uri: string
  readonly path: string
  readonly checked: Checked
  /** The datasheet beside the record, once it has been read. */
  readonly beside?: Beside | undefined
  readonly library: Library
  readonly client: Client
  /** The date, year-month-day. */
  readonly today: string
  check(path: string): Checked | null
  uriOf(path: string): string
}
