import type { Library } from '../library/library.ts'
import type { Field } from '../records/field.ts'
import { sheetPath, sheetPlaces, type Beside } from '../sheets/beside.ts'
import type { World } from './world.ts'

/** The sheets that panel records name, each read when it is asked for. */
export interface SheetsBeside {
  /**
   * Read or found missing, by the path of the record; undefined for a record that names none.
   *
   * @param source  what the record says, where that is known without reading it
   */
  at(path: string, source?: string | null): Promise<Beside | undefined>
  end(): void
}

/** Where a record says its sheet is; null for one that names none. */
export function sourceIn(library: Library, path: string): string | null {
  const file = library.file(path)
  if (file?.kind !== 'panel') return null
  return sheetPath((file.fields.get('/datasheet/source') as Field<string> | undefined)?.value)
}

/** A path in a record counts from the record's own folder, else from the library's. */
export function sheetsBeside({ sheets: open }: Pick<World, 'sheets'>, library: Library, cache: boolean): SheetsBeside {
  const sheets = open(cache)
  return {
    async at(path, source = sourceIn(library, path)) {
      if (source === null) return undefined
      const { paths, within } = sheetPlaces(source, path, library.settings(path)?.path)
      for (const one of paths) {
        const read = await sheets.at(one, within)
        if (read) return { state: 'read', source, path: one, ...read }
      }
      return { state: 'missing', source }
    },
    end: () => sheets.end(),
  }
}
