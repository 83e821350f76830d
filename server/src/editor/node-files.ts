import { readdir, readFile } from 'node:fs/promises'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { join } from 'node:path'
import { recordOfPath } from '../records/kinds.ts'
import { withoutMark, type Files } from './files.ts'

/** The disk, for editors that do not read for the server. Hidden folders and `node_modules` are passed over. */
export const nodeFiles: Files = {
  list: async (folders) => (await Promise.all(folders.map((uri) => nodeFiles.listIn(uri, true)))).flat(),
  listIn: async (uri, deep) => (isFile(uri) ? walk(fileURLToPath(uri), deep) : []),
  read: async (uri) => (isFile(uri) ? readFile(fileURLToPath(uri), 'utf8').then(withoutMark, () => null) : null),
}

const isFile = (uri: string) => uri.startsWith('file:')

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
