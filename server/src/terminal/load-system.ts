import type { Library } from '../library/library.ts'
import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import { contextsOf, libraryOf, readTexts } from './load.ts'
import { select } from './select.ts'
import type { World } from './world.ts'

/** A library with one system and only the records that it names, so that a large library costs no more than a small one. */
export async function loadSystem(world: World, path: string, full: string): Promise<Library> {
  const contexts = await contextsOf(world, [{ path: full, isFolder: false }])
  const paths = contexts.flatMap((context) => context.paths)
  const settings = paths.filter((one) => /wattproof\.ya?ml$/i.test(one) && recordOfPath(one)?.kind === 'library')
  const texts = await readTexts(world, contexts, [full, ...settings])
  const library = libraryOf(texts)
  const system = library.file(full)
  const named = system ? library.references(system).map(({ kind, field }) => ({ kind, id: field.value })) : []
  const climates = settings.flatMap((one) => climateOf(library, one))
  const found = [...named, ...climates].map((reference) => paths.filter((one) => fits(one, reference)))
  // a name that fits nothing is reported with its nearest neighbour, for which all must be known
  if (found.slice(0, named.length).some((fitting) => fitting.length === 0)) return (await select(world, [path])).library
  for (const [one, text] of await readTexts(world, contexts, found.flat())) library.put(one, text)
  return library
}

function climateOf(library: Library, path: string): readonly Named[] {
  const id = library.settings(path)?.record.site.climate?.value
  return id === undefined ? [] : [{ kind: 'climate', id }]
}

interface Named {
  readonly kind: RecordKind
  readonly id: string
}

/** Most paths do not even contain the id, which is checked much sooner. */
function fits(path: string, { kind, id }: Named): boolean {
  if (!path.includes(id)) return false
  const record = recordOfPath(path)
  return record?.kind === kind && record.id === id
}
