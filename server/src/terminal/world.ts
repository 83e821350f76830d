import type { FileText } from '../records/unread.ts'
import type { FileReport } from './file-report.ts'
import type { Pack } from './kept/pack.ts'
import type { Sheets } from '../reader/kept.ts'
import type { Progress } from './progress.ts'
import type * as pictures from '../report/index.ts'
import type { Bundle, Language, Texts as Words } from '../wording/bundle.ts'
import type { Share } from './share.ts'

export type Pictures = typeof pictures

/** What stands at a path. */
export type Standing = 'file' | 'folder' | null

/** Runs git in a folder; null where there is no git. */
export type Git = (
  folder: string,
  args: readonly string[],
  options?: { readonly input?: string; readonly indexFile?: string | undefined },
) => Promise<{ readonly code: number; readonly out: Buffer; readonly err: string } | null>

/** Everything that the command line touches outside itself. Paths are absolute. */
export interface World {
  readonly args: readonly string[]
  readonly cwd: string
  readonly env: Readonly<Record<string, string | undefined>>
  /** The folder of the package: `schemas` and `dist` are in it. */
  readonly home: string
  /** The date, year-month-day. */
  readonly today: string
  readonly colour: boolean
  /** Whether the terminal shows links; never where there is none. */
  readonly links: boolean
  /** The words of another language; loaded when it is asked for. */
  readonly words: (language: Language) => Words | undefined
  /** Those that were asked for; none for English. */
  readonly bundle?: Bundle | undefined
  /** Of the terminal, in characters; 100 where there is none. */
  readonly width: number
  /** Whether that width is known: output that a program reads is not broken into lines for nobody. */
  readonly hasWidth: boolean
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** Shown on a terminal alone. */
  readonly progress: Progress
  /** From now on memory counts for more than time. */
  readonly saveMemory: () => void
  /** The whole of standard input. */
  readonly stdin: () => Promise<string>
  /** A file's text without a byte order mark; rejects where it cannot be read. */
  readonly read: (path: string) => Promise<string>
  /** A record's text, why it was not read, or null where it is gone. A link may lead into the folder `within`. */
  readonly readRecord: (path: string, within: string) => Promise<FileText | null>
  /** Writes the whole of a file or leaves it as it was. */
  readonly write: (path: string, text: string) => Promise<void>
  /** Writes over a file that was read, with the byte order mark that it had. */
  readonly rewrite: (path: string, text: string) => Promise<void>
  /** Where a path leads to when links are followed. */
  readonly followed: (path: string) => Promise<string>
  /** A folder with all that lead to it, where it is not there. */
  readonly makeFolder: (path: string) => Promise<void>
  readonly append: (path: string, text: string) => Promise<void>
  readonly standing: (path: string) => Promise<Standing>
  /** What a folder holds; whatever is no folder counts as a file, a link to one too. */
  readonly list: (folder: string) => Promise<readonly { readonly name: string; readonly standing: Standing }[]>
  readonly git: Git
  /** Files below a folder that git knows or would add; null where git has no say. */
  readonly known: (folder: string) => Promise<readonly string[] | null>
  /** What git would call the contents of a file; null where there is none. */
  readonly hashes: (path: string, algorithm: 'sha1' | 'sha256') => Promise<readonly string[] | null>
  /** The datasheets that records name; `cache` says whether what was read is kept from run to run. */
  readonly sheets: (cache: boolean) => Sheets
  /** What is kept of findings from run to run; null for a user without a place for it. */
  readonly pack: () => Pack | null
  /** Checks a share of the files in another thread, which hands over some at a time, in order. */
  readonly inThread: (share: Share, take: (reports: readonly FileReport[]) => void) => Promise<void>
  /** Draws pictures and pages; loaded when it is first asked for, as no other command needs it. */
  readonly pictures: () => Pictures
  /** Becomes the language server; settles when that ends. */
  readonly serve: () => Promise<void>
}
