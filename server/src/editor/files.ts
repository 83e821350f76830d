/** How the server reads records that are not open. Node reads the disk, other hosts ask their client. */
export interface Files {
  /** The addresses of all records and settings in these folders. */
  list(folders: readonly string[]): Promise<readonly string[]>
  /** The same of a folder that need not be open, and of those below it where that is wanted. */
  listIn(folder: string, deep: boolean): Promise<readonly string[]>
  /** null where there is no such file */
  read(uri: string): Promise<string | null>
}

/** A byte order mark is no part of the text, in no editor. */
export const withoutMark = (text: string) => (text.startsWith('\uFEFF') ? text.slice(1) : text)
