import type { Library } from '../library/library.ts'
import { recordOfPath } from '../records/kinds.ts'
import { contextsOf, libraryOf, load } from './load.ts'
import { select } from './select.ts'
import type { World } from './world.ts'

/** A library with one system and only the records that it names, so that a large library costs no more than a small one. */
export async function loadSystem(world: World, path: string, full: string): Promise<Library> {
  const paths = (await contextsOf(world, [{ path: full, isFolder: false }])).flatMap((context) => context.paths)
  const keys = paths.map((one) => ({ one, key: keyOf(one) }))
  const settings = keys.flatMap(({ one, key }) => (key.startsWith('library ') ? one : []))
  const texts = await load(world, [], [full, ...settings])
  const library = libraryOf(texts)
  const system = library.file(full)
  const named = system ? library.references(system).map(({ kind, field }) => `${kind} ${field.value}`) : []
  const climates = settings.flatMap((one) => climateOf(library, one))
  const wanted = new Set([...named, ...climates])
  const found = keys.filter(({ key }) => wanted.has(key))
  // a name that fits nothing is told with its nearest neighbour, for which all must be known
  if (named.some((name) => found.every(({ key }) => key !== name))) return (await select(world, [path])).library
  for (const [one, text] of await load(
    world,
    [],
    found.map((f) => f.one),
  ))
    library.put(one, text)
  return library
}

function keyOf(path: string): string {
  const record = recordOfPath(path)
  return record ? `${record.kind} ${record.id}` : ''
}

function climateOf(library: Library, path: string): readonly string[] {
  const id = library.settings(path)?.record.site.climate?.value
  return id === undefined ? [] : [`climate ${id}`]
}
