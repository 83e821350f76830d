import { createLibrary } from '../library/create.ts'
import type { Library } from '../library/library.ts'
import { upward, type Folders } from '../library/upward.ts'
import { weatherNamedIn } from '../records/weather-file.ts'
import type { FileText, Unread } from '../records/unread.ts'
import { findRecords, recordsIn } from './find-records.ts'
import type { Pack } from './kept/pack.ts'
import { kinKeysIn, nameOf } from './kept/said.ts'
import { folderOf, isWithin } from './paths.ts'
import type { Texts } from './share.ts'
import type { World } from './world.ts'

/** A folder whose records make one context, with the records that were found. */
export interface Context {
  readonly folder: string
  readonly paths: readonly string[]
  /** Folders below that could not be opened. */
  readonly closed: ReadonlyMap<string, Unread>
}

/**
 * The contexts of some places: the nearest folder upward with a `wattproof.yaml`, up to the root of the repository; else
 * a named folder itself, and around a lone file the repository or, outside of one, the file's own folder.
 */
export async function contextsOf(
  world: World,
  places: readonly { path: string; isFolder: boolean }[],
): Promise<readonly Context[]> {
  const folders = new Map<string, 'deep' | 'flat'>()
  for (const { path, isFolder } of places) {
    const start = isFolder ? path : folderOf(path)
    if (folders.has(start)) continue
    const top = await upward(foldersOf(world), start)
    if (top?.isLibrary) folders.set(top.folder, 'deep')
    else if (isFolder || !top) folders.set(start, isFolder ? 'deep' : 'flat')
    else folders.set(top.folder, 'deep')
  }
  const deep = [...folders].filter(([, reach]) => reach === 'deep').map(([folder]) => folder)
  const outermost = [...folders].filter(
    ([folder]) => !deep.some((other) => other !== folder && isWithin(other, folder)),
  )
  return Promise.all(
    outermost.map(async ([folder, reach]) => ({
      folder,
      ...(await (reach === 'deep' ? findRecords : recordsIn)(world, folder)),
    })),
  )
}

/** So many take less memory than the process itself. */
const fewRecords = 3000

/** Reads the files of all contexts, and those named on their own. */
export const load = (world: World, contexts: readonly Context[], named: readonly string[]) =>
  readTexts(world, contexts, [...contexts.flatMap((context) => context.paths), ...named])

/** Reads files; a link may lead into the innermost context around it, and out of all into its own folder. */
export async function readTexts(
  world: World,
  contexts: readonly Context[],
  files: readonly string[],
): Promise<Map<string, FileText>> {
  const texts = new Map<string, FileText>()
  const folders = contexts.map(({ folder }) => folder).sort((a, b) => b.length - a.length)
  const paths = [...new Set(files)]
  if (paths.length > fewRecords) world.saveMemory()
  // in portions, for a process may only hold so many files open
  for (let at = 0; at < paths.length; at += 64) {
    const portion = paths.slice(at, at + 64)
    const read = await Promise.all(
      portion.map((path) => world.readRecord(path, folders.find((one) => isWithin(one, path)) ?? folderOf(path))),
    )
    read.forEach((text, i) => text !== null && texts.set(portion[i] as string, text))
    world.progress('read', Math.min(at + 64, paths.length), paths.length, world.bundle)
  }
  const weather = [...texts].flatMap(([path, text]) => (typeof text === 'string' ? weatherNamedIn(path, text) : []))
  for (const path of new Set(weather)) texts.set(path, (await world.readRecord(path, folderOf(path))) ?? '')
  return texts
}

/** How many records are kept as they were read: a reading takes some 40 KB, and two in a row belong to one family. */
const mostKept = 16

/** @param pack  what is kept of panels from run to run, so that they are not read to find one's family */
export function libraryOf(texts: Texts, pack: Pack | null = null): Library {
  const library = createLibrary(mostKept)
  for (const [path, text] of texts) library.put(path, text)
  if (pack) library.kinKeysFrom((path) => kinKeysIn(pack, nameOf(library.text(path))))
  return library
}

const foldersOf = (world: World): Folders => ({
  holds: async (folder, names) => {
    const found = await Promise.all(names.map((name) => world.standing(`${folder}/${name}`)))
    return found.some((standing) => standing !== null)
  },
  above: (folder) => (folder === folderOf(folder) ? null : folderOf(folder)),
})
