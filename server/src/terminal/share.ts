import type { Beside } from '../sheets/beside.ts'
import type { Bundle } from '../wording/bundle.ts'
import type { FileText } from '../records/unread.ts'

/** Texts by path, as a library is made of them. */
export type Texts = ReadonlyMap<string, FileText>

/** A share of the work, as it is handed to another thread. */
export interface Share {
  readonly texts: Texts
  readonly targets: readonly string[]
  readonly cwd: string
  readonly today: string
  /** The words of another language. */
  readonly bundle?: Bundle | undefined
  /** By the path of the record that names it. */
  readonly sheets: ReadonlyMap<string, Beside>
}
