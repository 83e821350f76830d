import type { Sheet } from './sheet.ts'

/** The sheet that a record names, as the adapters found it. */
export type Beside =
  | {
      readonly state: 'read'
      readonly source: string
      /** Where it lies. */
      readonly path: string
      readonly sheet: Sheet
      readonly sha256: string
    }
  | { readonly state: 'missing'; readonly source: string }

/** The path that a record's `source` names, where it is a PDF that may lie beside it; an address is never fetched. */
export function sheetPath(source: string | undefined): string | null {
  if (source === undefined || /^[a-z][a-z+.-]+:/i.test(source)) return null
  return /\.pdf$/i.test(source) ? source.replaceAll('\\', '/') : null
}

/** Where a sheet may lie: by the record, else by the library's root, and never outside of the library. */
interface SheetPlaces {
  readonly paths: readonly string[]
  /** The folder that links may lead into. */
  readonly within: string
}

/**
 * A record may be a stranger's, so a path that leaves the library is no place. Without settings nothing says how far the
 * library reaches: records are usually in a folder of their kind beside the sheets, or one deeper (`records/mine`).
 *
 * @param record    path of the record
 * @param settings  path of the library's settings, where there are any
 */
export function sheetPlaces(source: string, record: string, settings: string | undefined): SheetPlaces {
  const own = folderOf(record)
  const within = settings === undefined ? above(above(own)) : folderOf(settings)
  const isWhole = /^(?:\/|[A-Za-z]:\/)/.test(source)
  const folders = [...new Set([own, settings === undefined ? own : within])]
  const paths = isWhole ? [source] : folders.map((folder) => `${folder}/${source}`)
  return { paths: paths.map(normalized).filter((path) => path.startsWith(`${within}/`)), within }
}

const above = (folder: string) => folderOf(folder) || folder

const folderOf = (path: string) => path.slice(0, Math.max(0, path.lastIndexOf('/')))

function normalized(path: string): string {
  const steps: string[] = []
  for (const step of path.split('/'))
    if (step === '..') steps.pop()
    else if (step !== '.') steps.push(step)
  return steps.join('/')
}
