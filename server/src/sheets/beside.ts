import type { Sheet } from './sheet.ts'

/** The sheet that a record names, as the adapters found it. */
export type Beside =
  | { readonly state: 'read'; readonly source: string; readonly sheet: Sheet; readonly sha256: string }
  | { readonly state: 'missing'; readonly source: string }

/** The path that a record's `source` names, where it is a PDF that may lie beside it; an address is never fetched. */
export function sheetPath(source: string | undefined): string | null {
  if (source === undefined || /^[a-z][a-z+.-]+:/i.test(source)) return null
  return /\.pdf$/i.test(source) ? source.replaceAll('\\', '/') : null
}
