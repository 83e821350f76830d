import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, realpathSync, renameSync, statSync, writeFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import type { Sheet } from '../sheets/sheet.ts'
import { isSheet, unreadable } from '../sheets/sheet.ts'
import { createReader, type Reader } from './ask.ts'
import { cacheFolder, type Environment } from './cache-folder.ts'
import { mostBytes, tooLarge } from './limits.ts'

export interface SheetFile {
  readonly sheet: Sheet
  readonly sha256: string
}

export interface Sheets {
  /** Whether it reads files of this machine alone. */
  readonly isLocal: boolean
  /** The sheet in a file; null where there is no such regular file, or where links lead out of the folder that is given. */
  at(path: string, within?: string): Promise<SheetFile | null>
  end(): void
}

/**
 * Sheets by their content: what was read once is kept in the user's cache folder, under the fingerprint of the file and
 * of the program that read it.
 *
 * @param program  the file of the reading process
 * @param cache    whether anything is kept from run to run
 */
export function createSheets(program: string, { cache, env }: { cache: boolean; env: Environment }): Sheets {
  let reader: Reader | null = null
  let folder: string | null | undefined
  const known = new Map<string, Promise<Sheet>>()
  return {
    isLocal: true,
    async at(path, within) {
      const bytes = bytesAt(path, within)
      if (bytes === null) return null
      if (bytes === 'too large') return { sheet: unreadable(tooLarge), sha256: '' }
      const sha256 = createHash('sha256').update(bytes).digest('hex')
      const sheet = known.get(sha256) ?? read(bytes, sha256)
      known.set(sha256, sheet)
      return { sheet: await sheet, sha256 }
    },
    end: () => reader?.end(),
  }

  async function read(bytes: Uint8Array, sha256: string): Promise<Sheet> {
    if (cache && folder === undefined) folder = folderOf()
    const kept = cache && folder ? join(folder, `${sha256}.json`) : null
    const before = kept && readKept(kept)
    if (before) return before
    reader ??= createReader(program)
    const { sheet, lasting } = await reader.read(bytes)
    if (kept && lasting) keep(kept, sheet)
    return sheet
  }

  function folderOf(): string | null {
    const made = createHash('sha256').update(readFileSync(program)).digest('hex').slice(0, 16)
    return cacheFolder(env, 'sheets', made)
  }
}

function bytesAt(path: string, within: string | undefined): Uint8Array | 'too large' | null {
  try {
    const real = realpathSync.native(path)
    if (within !== undefined && !real.startsWith(join(realpathSync.native(within), sep))) return null
    const standing = statSync(real)
    if (!standing.isFile()) return null // a pipe or a device may never end
    return standing.size > mostBytes ? 'too large' : new Uint8Array(readFileSync(real))
  } catch {
    return null
  }
}

/** null for a file that is not there, was cut or holds something else. */
function readKept(path: string): Sheet | null {
  try {
    const kept: unknown = JSON.parse(readFileSync(path, 'utf8'))
    return isSheet(kept) ? kept : null
  } catch {
    return null
  }
}

/** Under another name first, so that nobody reads half a file. A cache that cannot be written is no failure. */
function keep(path: string, sheet: Sheet) {
  try {
    mkdirSync(join(path, '..'), { recursive: true })
    const draft = `${path}.${process.pid}`
    writeFileSync(draft, JSON.stringify(sheet))
    renameSync(draft, path)
  } catch {
    // the sheet is read anew next time
  }
}
