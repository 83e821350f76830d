import { createHash } from 'node:crypto'
import { lstatSync, readFileSync, readlinkSync } from 'node:fs'

/**
 * The names that git gives to the contents of a file: as they are, and with line ends as git keeps them where it is set to
 * change them. null where there is no such file,
 * nothing for what is no file, which is never read.
 */
export function hashes(path: string, algorithm: 'sha1' | 'sha256'): readonly string[] | null {
  const found = lstatSync(path, { throwIfNoEntry: false })
  if (!found) return null
  if (!found.isFile() && !found.isSymbolicLink()) return []
  const bytes = found.isSymbolicLink() ? Buffer.from(readlinkSync(path)) : readFileSync(path)
  const unix = Buffer.from(bytes.toString('latin1').replaceAll('\r\n', '\n'), 'latin1')
  return [bytes, unix].map((content) =>
    createHash(algorithm).update(`blob ${content.length}\0`).update(content).digest('hex'),
  )
}
