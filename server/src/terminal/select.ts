import type { Library } from '../library/library.ts'
import { byPath } from '../library/in-order.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { Unread } from '../records/unread.ts'
import { CouldNotRun } from './could-not-run.ts'
import { findRecords, type Found } from './find-records.ts'
import type { Pack } from './kept/pack.ts'
import { contextsOf, libraryOf, load, type Context } from './load.ts'
import { absolute, folderOf, isWithin } from './paths.ts'
import type { Texts } from './share.ts'
import type { Changes } from './since.ts'
import type { World } from './world.ts'
import { phrase } from '../wording/phrase.ts'

/** How the records below a folder differ from before. */
export type ChangesIn = (folder: string) => Promise<Changes>

/** What of the named places is to be checked; all of it unless something else is said. */
interface Choice {
  /** How a folder differs from before: only what changed, and what depends on that. */
  readonly changesIn?: ChangesIn | undefined
  /** Files that were named are checked even where they did not change. */
  readonly alsoNamed?: boolean
  /** What is kept from run to run, so that fewer records are read. */
  readonly pack?: Pack | null
}

/** The records to check, in path order, and everything that stands around them. */
export interface Selection {
  readonly texts: Texts
  readonly library: Library
  readonly targets: readonly string[]
  /** Folders below what was named that could not be opened. */
  readonly closed: ReadonlyMap<string, Unread>
}

/**
 * What a person named, with all that depends on it: a named file brings along the records that name it, for a changed
 * panel can break an unchanged system.
 *
 * @param paths  files and folders; none is the current folder
 */
export async function select(
  world: World,
  paths: readonly string[],
  { changesIn, alsoNamed = false, pack = null }: Choice = {},
): Promise<Selection> {
  const places = await Promise.all((paths.length ? paths : ['.']).map((path) => fileOrFolder(world, path)))
  const contexts = await contextsOf(world, places)
  const files = places.filter(({ isFolder }) => !isFolder).map(({ path }) => path)
  const inFolders = await Promise.all(
    places.filter(({ isFolder }) => isFolder).map(({ path }) => recordsBelow(world, path, contexts)),
  )
  const targets = new Set([...files, ...inFolders.flatMap((found) => found.paths)])
  const asked = (path: string) => places.some((place) => isWithin(place.path, path))
  const closed = new Map(
    [...contexts, ...inFolders].flatMap((found) => [...found.closed]).filter(([path]) => asked(path)),
  )
  const texts = await load(world, contexts, [...targets])
  const library = libraryOf(texts, pack)
  if (changesIn) {
    const named = alsoNamed ? [...files, ...dependents(library, files)] : []
    const changed = await affected(library, contexts, changesIn, asked)
    return selection({ texts, library, closed }, [...changed, ...named])
  }
  return selection({ texts, library, closed }, [...targets, ...dependents(library, files)])
}

/** One text in place of what is on disk under that name; the file need not exist. */
export async function selectText(world: World, name: string, text: string, pack: Pack | null): Promise<Selection> {
  const path = absolute(world.cwd, name)
  mustBeRecord(name)
  const texts = await load(world, await contextsOf(world, [{ path, isFolder: false }]).catch(() => []), [])
  texts.set(path, text)
  return { texts, library: libraryOf(texts, pack), targets: [path], closed: new Map() }
}

const selection = (all: Omit<Selection, 'targets'>, paths: readonly string[]): Selection => ({
  ...all,
  targets: [...new Set(paths)].filter((path) => all.texts.has(path)).sort(byPath),
})

async function fileOrFolder(world: World, path: string) {
  const full = absolute(world.cwd, path)
  const standing = await world.standing(full)
  if (!standing) throw new CouldNotRun(phrase`there is no file or folder \`${path}\``)
  if (standing === 'file') mustBeRecord(path)
  return { path: full, isFolder: standing === 'folder' }
}

function mustBeRecord(path: string): void {
  if (recordOfPath(path)) return
  throw new CouldNotRun(
    phrase`\`${path}\` is no record: names end in .panel.yaml, .controller.yaml, .battery.yaml, .climate.yaml or .system.yaml`,
  )
}

async function recordsBelow(world: World, folder: string, contexts: readonly Context[]): Promise<Found> {
  return contexts.find((context) => context.folder === folder) ?? findRecords(world, folder)
}

/** Of what was asked for: what changed since a revision, with all that depends on it, and everything under changed settings. */
async function affected(
  library: Library,
  contexts: readonly Context[],
  changesIn: ChangesIn,
  asked: (path: string) => boolean,
): Promise<readonly string[]> {
  const parts = contexts.map(async ({ folder, paths }) => {
    const { there, gone } = await changesIn(folder)
    const changed = [...there, ...gone].filter(recordOfPath)
    const roots = changed.filter((path) => recordOfPath(path)?.kind === 'library').map(folderOf)
    const governed = paths.filter((path) => asked(path) && roots.some((root) => isWithin(root, path)))
    const named = changed.filter(asked)
    return [...named, ...dependents(library, named), ...named.flatMap((path) => family(library, path)), ...governed]
  })
  return (await Promise.all(parts)).flat()
}

/** A panel is compared with the others of its family. */
function family(library: Library, path: string): readonly string[] {
  const file = library.file(path)
  return file?.kind === 'panel' ? library.kinOf(file) : []
}

/** The records that name one of these, which may be gone; settings name a climate for all systems that name none. */
function dependents(library: Library, paths: readonly string[]): readonly string[] {
  return paths.flatMap((path) => {
    const record = recordOfPath(path)
    if (!record || record.kind === 'library' || record.kind === 'system') return []
    const isUsual = record.kind === 'climate' && library.settings(path)?.record.site.climate?.value === record.id
    const users = library.ofKind('system', path).filter((user) => {
      const named = library.references(user).filter(({ kind }) => kind === record.kind)
      return named.some(({ field }) => field.value === record.id) || (isUsual && named.length === 0)
    })
    return users.map((user) => user.path)
  })
}
