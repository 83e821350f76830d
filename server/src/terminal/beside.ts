import type { Library } from '../library/library.ts'
import type { Field } from '../records/field.ts'
import { sheetPath, sheetPlaces, type Beside } from '../sheets/beside.ts'
import type { World } from './world.ts'

/** The sheets that panel records name, each read when it is asked for. */
export interface SheetsBeside {
  /** Read or found missing, by the path of the record; undefined for a record that names none. */
  at(path: string): Promise<Beside | undefined>
  end(): void
}

/** A path in a record counts from the record's own folder, else from the library's. */
export function sheetsBeside({ sheets: open }: Pick<World, 'sheets'>, library: Library, cache: boolean): SheetsBeside {
  const sheets = open(cache)
  return {
    async at(path) {
      const file = library.file(path)
      if (file?.kind !== 'panel') return undefined
      const source = sheetPath((file.fields.get('/datasheet/source') as Field<string> | undefined)?.value)
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
