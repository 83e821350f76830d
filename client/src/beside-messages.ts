// What the view beside the editor and the extension say to each other.
import type { ComparisonResult, PicturesResult, SheetResult } from '../../server/src/editor/protocol.ts'

/** What the view shows of a record. */
export type Side = 'pictures' | 'sheet'

export type ToView =
  | { readonly type: 'show'; readonly pictures: PicturesResult; readonly hasSheet: boolean }
  | { readonly type: 'sheet'; readonly sheet: SheetResult }
  /** What the PDF of the sheet holds; null where it could not be read. */
  | { readonly type: 'pdf'; readonly bytes: Uint8Array | null }
  | { readonly type: 'compared'; readonly comparison: ComparisonResult }
  /** The field that the cursor is in, as a JSON pointer. */
  | { readonly type: 'field'; readonly field: string | null }

export type FromView =
  | { readonly type: 'ready' }
  | { readonly type: 'reveal'; readonly field: string }
  | { readonly type: 'compare'; readonly surface: string }
  | { readonly type: 'page' }
  | { readonly type: 'side'; readonly side: Side }
  /** Asks for the PDF that was named last. */
  | { readonly type: 'pdf' }
  /** A field that the sheet prints and the record lacks. */
  | { readonly type: 'add'; readonly field: string }
