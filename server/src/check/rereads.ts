import type { ReadFile } from '../records/read-file.ts'
import { readFile } from '../records/read.ts'

/** A file of a library as it reads with another text. */
export type Reread = (text: string) => ReadFile

/**
 * Reads a file with the texts that corrections make. A text is read once, for those that make a correction and for those
 * that try it.
 *
 * @param currency  ISO 4217 code of a bare price
 */
export function rereads(typed: ReadFile, currency: string | undefined): Reread {
  const known = new Map([[typed.tree.text, typed]])
  return (text) => {
    const file = known.get(text) ?? readFile(typed.path, text, currency, typed.tree)!
    known.set(text, file)
    return file
  }
}
