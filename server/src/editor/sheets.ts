import type { Library } from '../library/library.ts'
import type { Field } from '../records/field.ts'
import type { SheetFile, Sheets } from '../reader/kept.ts'
import { createAddresses } from './addresses.ts'
import { sheetPath, sheetPlaces, type Beside } from '../sheets/beside.ts'

/** The sheets of records that are open: read in the background, and kept until the record is opened anew. */
export interface OpenSheets {
  /** undefined for a record without a sheet, and while its sheet is being read. */
  of(path: string): Beside | undefined
  /** Fulfilled when the sheet of a record has been read; one that was not there is looked for again. */
  whenRead(path: string): Promise<unknown>
  /** A sheet by its address, whatever record names it. */
  at(uri: string): Promise<SheetFile | null>
  /** Looks for the sheet of a record again. */
  forget(path: string): void
}

interface Known {
  readonly source: string
  /** null while it is being read. */
  readonly beside: Beside | null
  readonly reading: Promise<unknown>
}

interface SheetWishes {
  /** Whether the sheet of a record is to be read. */
  readonly isWanted: (path: string) => boolean
  /** Fulfilled when the settings of its library are known, which say how far the library reaches. */
  readonly ready: () => Promise<unknown>
  /** Called when the sheet of a record has been read. */
  readonly arrived: (path: string) => void
}

/** @param sheets  reads files; null where there are none to read */
export function createOpenSheets(
  library: Library,
  sheets: Sheets | null,
  { isWanted, ready, arrived }: SheetWishes,
): OpenSheets {
  const known = new Map<string, Known>()
  return {
    of(path) {
      const file = sheets ? library.file(path) : undefined
      if (file?.kind !== 'panel' || !isWanted(path)) return undefined
      const source = sheetPath((file.fields.get('/datasheet/source') as Field<string> | undefined)?.value)
      if (source === null) return undefined
      const before = known.get(path)
      if (before?.source === source) return before.beside ?? undefined
      const reading = find(path, source).then(
        (beside) => {
          if (known.get(path)?.source !== source) return
          known.set(path, { source, beside, reading })
          arrived(path)
        },
        () => known.delete(path), // asked again at the next check
      )
      known.set(path, { source, beside: null, reading })
      return undefined
    },
    async whenRead(path) {
      if (this.of(path)?.state === 'missing') this.forget(path)
      this.of(path)
      await known.get(path)?.reading
    },
    at: async (uri) => sheets?.at(onDisk(createAddresses().pathOf(uri) ?? uri)) ?? null,
    forget: (path) => void known.delete(path),
  }

  async function find(path: string, source: string): Promise<Beside> {
    await ready()
    const { paths, within } = sheetPlaces(source, path, library.settings(path)?.path)
    for (const one of paths) {
      const read = await sheets!.at(onDisk(one), onDisk(within))
      if (read) return { state: 'read', source, path: one, ...read }
    }
    return { state: 'missing', source }
  }
}

/** The library's paths are addresses with their escapes read. */
const onDisk = (path: string): string => path.replace(/^file:\/\//, '').replace(/^\/([A-Za-z]:)/, '$1')
