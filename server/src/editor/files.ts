import type { FileText } from '../records/unread.ts'

/** How the server reads records that are not open. Node reads the disk, other hosts ask their client. */
export interface Files {
  /** The addresses of all records and settings in these folders. */
  list(folders: readonly string[]): Promise<readonly string[]>
  /** The same of a folder that need not be open, and of those below it where that is wanted. */
  listIn(folder: string, deep: boolean): Promise<readonly string[]>
  /** Why it was not read where it is there, null where it is not. A link may lead into the folder `within`, or else into its own. */
  read(uri: string, within?: string): Promise<FileText | null>
}

/** A byte order mark is no part of the text, in no editor. */
export const withoutMark = (text: string) => (text.startsWith('\uFEFF') ? text.slice(1) : text)
