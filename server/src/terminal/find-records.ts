import { recordOfPath } from '../records/kinds.ts'
import { byPath } from '../library/in-order.ts'
import { refusal } from '../library/read-safely.ts'
import type { Unread } from '../records/unread.ts'
import type { World } from './world.ts'

/** Paths of records, and the folders that could not be opened. */
export interface Found {
  readonly paths: readonly string[]
  readonly closed: ReadonlyMap<string, Unread>
}

/** All records below a folder, in path order: what git knows or would add, or every file where git has no say. */
export async function findRecords(world: World, folder: string): Promise<Found> {
  const closed = new Map<string, Unread>()
  const paths = (await world.known(folder)) ?? (await walk(world, folder, closed))
  return { paths: paths.filter(recordOfPath).sort(byPath), closed }
}

/** Records in a folder itself, not below it. */
export async function recordsIn(world: World, folder: string): Promise<Found> {
  const closed = new Map<string, Unread>()
  const paths = (await entriesOf(world, folder, closed))
    .flatMap(({ name, standing }) => (standing === 'file' && recordOfPath(name) ? [join(folder, name)] : []))
    .sort(byPath)
  return { paths, closed }
}

async function walk(world: World, folder: string, closed: Map<string, Unread>): Promise<string[]> {
  const found: string[] = []
  for (const { name, standing } of await entriesOf(world, folder, closed)) {
    if (standing === 'file') found.push(join(folder, name))
    else if (standing === 'folder' && !name.startsWith('.') && name !== 'node_modules')
      found.push(...(await walk(world, join(folder, name), closed)))
  }
  return found
}

async function entriesOf(world: World, folder: string, closed: Map<string, Unread>) {
  return world.list(folder).catch((error: unknown) => {
    const why = refusal(error, folder)
    if (why) closed.set(folder, why)
    return []
  })
}

const join = (folder: string, name: string) => (folder.endsWith('/') ? `${folder}${name}` : `${folder}/${name}`)
