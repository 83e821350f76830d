import type { Beside } from '../sheets/beside.ts'
import type { FileText } from '../records/unread.ts'

/** Texts by path, as a library is made of them. */
export type Texts = ReadonlyMap<string, FileText>

/** A share of the work, as it is handed to another thread: files to check, or panels to lay on a surface. */
export type Share = CheckShare | SurfaceShare

export interface CheckShare {
  readonly texts: Texts
  readonly targets: readonly string[]
  readonly cwd: string
  readonly today: string
  /** By the path of the record that names it. */
  readonly sheets: ReadonlyMap<string, Beside>
}

export interface SurfaceShare {
  readonly texts: Texts
  /** Path of the system, and the ids of one of its surfaces and of the array that the panels would belong to. */
  readonly system: string
  readonly surface: string
  readonly array?: string
  /** Paths of the panel records. */
  readonly panels: readonly string[]
}
