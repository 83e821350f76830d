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
  /** Whether what was read of datasheets is kept from run to run. */
  readonly cache: boolean
  /** The words of another language. */
  readonly bundle?: Bundle | undefined
}
