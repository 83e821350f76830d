import type { Library } from '../library/library.ts'
import type { Field } from '../records/field.ts'
import { sheetPath, sheetPlaces, type Beside } from '../sheets/beside.ts'
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
    const { paths, within } = sheetPlaces(source, path, library.settings(path)?.path)
    let beside: Beside = { state: 'missing', source }
    for (const place of paths) {
      const read = await sheets.at(place, within)
      if (!read) continue
      beside = { state: 'read', source, path: place, ...read }
      break
    }
    found.set(path, beside)
  }
  sheets.end()
  return found
}
