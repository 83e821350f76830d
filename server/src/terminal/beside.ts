import type { Library } from '../library/library.ts'
import type { Field } from '../records/field.ts'
import { sheetPath, type Beside } from '../sheets/beside.ts'
import { folderOf } from './paths.ts'
import type { World } from './world.ts'

/**
 * The sheets that panel records name, read or found missing, by the path of the record. A path counts from the record's
 * own folder, else from the library's.
 */
export async function sheetsBeside(
  world: World,
  library: Library,
  targets: readonly string[],
  cache: boolean,
): Promise<ReadonlyMap<string, Beside>> {
  const found = new Map<string, Beside>()
  const sheets = world.sheets(cache)
  for (const path of targets) {
    const file = library.file(path)
    const source =
      file?.kind === 'panel'
        ? sheetPath((file.fields.get('/datasheet/source') as Field<string> | undefined)?.value)
        : null
    if (source === null) continue
    const folders = [folderOf(path), folderOf(library.settings(path)?.path ?? path)]
    const places =
      source.startsWith('/') || /^[A-Za-z]:\//.test(source) ? [source] : folders.map((folder) => `${folder}/${source}`)
    let beside: Beside = { state: 'missing', source }
    for (const place of places) {
      const read = await sheets.at(place)
      if (!read) continue
      beside = { state: 'read', source, ...read }
      break
    }
    found.set(path, beside)
  }
  sheets.end()
  return found
}
