import type { FileText, Unread } from '../records/unread.ts'
import { phrase } from '../wording/phrase.ts'

/** What is asked of a disk; paths have forward slashes. All may reject with an error that has a system's `code`. */
export interface Disk {
  /** The path behind all links. */
  real(path: string): string | Promise<string>
  /** What is there, links followed. */
  about(path: string): Standing | Promise<Standing>
  isLink(path: string): boolean | Promise<boolean>
  /** The text without a byte order mark. */
  read(path: string): string | Promise<string>
}

interface Standing {
  isFile(): boolean
  isDirectory(): boolean
  readonly size: number
}

/** Four bytes for each character of the longest text that is analysed. */
const mostBytes = 1024 * 1024
/** A year of hourly weather has some 1.6 MiB. */
const mostWeather = 8 * mostBytes

/**
 * The text of a record: only a regular file is read, of a size that a record may have, and a link is followed inside the
 * library alone.
 *
 * @param within  the folder that a link may lead into
 * @returns       null where there is no such file
 */
export async function readSafely(disk: Disk, path: string, within: string): Promise<FileText | null> {
  try {
    if ((await disk.isLink(path)) && !isWithin(await disk.real(within), await disk.real(path)))
      return { because: phrase`it is a link that leads out of its library` }
    const standing = await disk.about(path)
    if (standing.isDirectory()) return { because: phrase`it is a folder, not a record` }
    if (!standing.isFile()) return { because: phrase`it is no regular file` }
    if (standing.size > (/\.epw$/i.test(path) ? mostWeather : mostBytes))
      return { because: phrase`it has ${(standing.size / mostBytes).toFixed(1)} MiB, and a record has a few KiB` }
    return await disk.read(path)
  } catch (error) {
    return refusal(error, path)
  }
}

/** Why the system does not open something; null where it is not there. */
export function refusal(error: unknown, path: string): Unread | null {
  const { code } = error as { code?: string }
  if (code === 'ENOENT' || code === 'ENOTDIR')
    return path.includes('\ufffd') ? { because: phrase`its name holds bytes that are not text` } : null
  if (code === 'EACCES' || code === 'EPERM') return { because: phrase`you have no permission to open it` }
  if (code === 'ELOOP') return { because: phrase`its links lead in a circle` }
  return { because: code ? phrase`the system answers ${code}` : phrase`the system answers with an error` }
}

const isWithin = (folder: string, path: string) => `${path}/`.startsWith(folder.endsWith('/') ? folder : `${folder}/`)
