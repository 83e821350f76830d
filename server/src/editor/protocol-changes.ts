// What the server and its clients share about changes. Imports no more than types, for the client loads it too.
import type { PicturesParams, Range } from './protocol.ts'

/** Client to server: puts a panel on a surface. What is not chosen yet is asked back, a question at a time. */
export const putPanelRequest = 'wattproof/putPanel'
export interface PutPanelParams extends PicturesParams {
  readonly surface?: string
  readonly array?: string
  readonly panel?: string
}
export type PutPanelResult =
  | { readonly choose: 'surface' | 'array' | 'panel'; readonly from: readonly Choice[] }
  | {
      readonly edits: readonly { readonly range: Range; readonly newText: string }[]
      /** What they do, in a sentence. */
      readonly done: string
    }
  | { readonly problem: string }
  | null
export interface Choice {
  readonly id: string
  /** Its figures in one line. */
  readonly figures: string
  /** Why it cannot be chosen, or what to mind. */
  readonly note: string
}

/** Client to server: what changes of records do to findings and derived values, as Markdown; null where that is nothing. */
export const changesRequest = 'wattproof/changes'
export interface ChangesParams {
  /** The revision in words. */
  readonly since: string
  /** Texts of changed files as they were; null for one that was not there. */
  readonly before: readonly { readonly uri: string; readonly text: string | null }[]
}
export type ChangesResult = { readonly text: string } | null
