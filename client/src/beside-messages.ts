// What the view beside the editor and the extension say to each other.
import type { ComparisonResult, PicturesResult } from '../../server/src/editor/protocol.ts'

export type ToView =
  | { readonly type: 'show'; readonly pictures: PicturesResult }
  | { readonly type: 'compared'; readonly comparison: ComparisonResult }
  /** The field that the cursor is in, as a JSON pointer. */
  | { readonly type: 'field'; readonly field: string | null }

export type FromView =
  | { readonly type: 'ready' }
  | { readonly type: 'reveal'; readonly field: string }
  | { readonly type: 'compare'; readonly surface: string }
  | { readonly type: 'page' }
