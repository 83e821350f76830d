import { recordOfPath } from '../records/kinds.ts'
import { CouldNotRun } from './could-not-run.ts'
import type { World } from './world.ts'

/** All records below a folder, in path order: what git knows or would add, or every file where git has no say. */
export async function findRecords(world: World, folder: string): Promise<readonly string[]> {
  const paths = (await world.known(folder)) ?? (await walk(world, folder))
  return paths.filter(recordOfPath).sort(byPath)
}

/** Records in a folder itself, not below it. */
export async function recordsIn(world: World, folder: string): Promise<readonly string[]> {
  const entries = await entriesOf(world, folder)
  return entries
    .flatMap(({ name, standing }) => (standing === 'file' && recordOfPath(name) ? [join(folder, name)] : []))
    .sort(byPath)
}

/** By UTF-16 unit, so that the order is the same on every machine. */
export const byPath = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)

async function walk(world: World, folder: string): Promise<string[]> {
  const found: string[] = []
  for (const { name, standing } of await entriesOf(world, folder)) {
    if (standing === 'file') found.push(join(folder, name))
    else if (standing === 'folder' && !name.startsWith('.') && name !== 'node_modules')
      found.push(...(await walk(world, join(folder, name))))
  }
  return found
}

async function entriesOf(world: World, folder: string) {
  return world.list(folder).catch((error: NodeJS.ErrnoException) => {
    throw new CouldNotRun(`the folder ${folder} cannot be read (${error.code})`)
  })
}

const join = (folder: string, name: string) => (folder.endsWith('/') ? `${folder}${name}` : `${folder}/${name}`)
