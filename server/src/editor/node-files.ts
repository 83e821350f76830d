import { lstat, readdir, readFile, realpath, stat } from 'node:fs/promises'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { dirname, join } from 'node:path'
import { readSafely, type Disk } from '../library/read-safely.ts'
import { recordOfPath } from '../records/kinds.ts'
import { withoutMark, type Files } from './files.ts'

/** The disk, for editors that do not read for the server. Hidden folders and `node_modules` are passed over. */
export const nodeFiles: Files = {
  list: async (folders) => (await Promise.all(folders.map((uri) => nodeFiles.listIn(uri, true)))).flat(),
  listIn: async (uri, deep) => {
    const folder = pathOf(uri)
    return folder === null ? [] : walk(folder, deep)
  },
  read: async (uri, within) => {
    const path = pathOf(uri)
    const folder = within === undefined ? null : pathOf(within)
    return path === null ? null : readSafely(disk, path, folder ?? dirname(path))
  },
}

const disk: Disk = {
  real: async (path) => (await realpath(path)).replaceAll('\\', '/'),
  about: (path) => stat(path),
  isLink: async (path) => (await lstat(path)).isSymbolicLink(),
  read: async (path) => withoutMark(await readFile(path, 'utf8')),
}

/** null for what is no file of this machine: another scheme, another host, an escaped slash. */
function pathOf(uri: string): string | null {
  try {
    return uri.startsWith('file:') ? fileURLToPath(uri) : null
  } catch {
    return null
  }
}

async function walk(folder: string, deep = true): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => [])
  const found = entries.map(async (entry): Promise<string[]> => {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) return deep && !isPassedOver(entry.name) ? walk(path) : []
    return recordOfPath(path) ? [pathToFileURL(path).href] : []
  })
  return (await Promise.all(found)).flat()
}

const isPassedOver = (name: string) => name.startsWith('.') || name === 'node_modules'
