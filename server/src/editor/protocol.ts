// What the server and its clients share beyond the language server protocol. Imports nothing, for the client loads it too.

/** Files that hold records or settings, for watchers and searches. */
export const recordGlobs = [
  '**/*.{panel,controller,battery,climate,system}.{yaml,yml,json}',
  '**/wattproof.{yaml,yml}',
] as const

/** Files of hourly weather: watched, but read only where a record names them. */
export const weatherGlob = '**/*.{epw,EPW}'

/** Documents of other schemes, such as an old version that git shows, are answered with nothing. */
export const schemes = ['file', 'untitled', 'vscode-vfs', 'vscode-test-web', 'vscode-remote'] as const

/** Begins the name of a worker that is to hold a lock of that name; an editor may put more in front of it. */
export const lockPrefix = 'wattproof-'

export interface InitializationOptions {
  /** Another extension reports what is not YAML; the server then holds back pure syntax findings. */
  readonly syntaxElsewhere?: boolean
  /** The client answers `wattproof/files` and `wattproof/read`; without it the server reads the folders itself. */
  readonly clientFiles?: boolean
  /** A command of the client that shows places: `(uri: string, position, locations)`. Without it a lens is plain text. */
  readonly showReferences?: string
  /** Address of the page of a rule, with `{rule}` where its id goes. A server that runs on Node has pages of its own. */
  readonly rulePage?: string
  /** Address of the program that draws, for a server that lives in a worker. */
  readonly pictures?: string
  /** The language of what is said, such as `de`; without it the locale of the client. */
  readonly language?: string
  /** The units of what is said, such as `us`; metric without it. */
  readonly units?: string
  /** Address of the folder of the other languages, for a server that lives in a worker. */
  readonly languages?: string
  /** Address of the program that reads sheets in a worker of its own, for a server that lives in a worker. */
  readonly sheetReader?: string
}

/** Server to client: the addresses of all files that match one of the globs, of the window or of one folder. */
export const filesRequest = 'wattproof/files'
export interface FilesParams {
  readonly globs: readonly string[]
  readonly folder?: string
}
export type FilesResult = readonly string[]

/** Server to client: the text of a file, why it was not read, or null where there is none. */
export const readRequest = 'wattproof/read'
export interface ReadParams {
  readonly uri: string
}
export type ReadResult =
  string | { readonly because: { readonly template: string; readonly values: readonly string[] } } | null

/** Server to client, where the server cannot read files: the bytes of a file, its size where that is above the limit, or null where there is none. */
export const bytesRequest = 'wattproof/bytes'
export interface BytesParams {
  readonly uri: string
  readonly most: number
}
export type BytesResult = Uint8Array | { readonly size: number } | null

/** Client to server: a commented record to be filled in, null for a kind that does not exist. */
export const skeletonRequest = 'wattproof/skeleton'
export interface SkeletonParams {
  readonly kind: string
}
export type SkeletonResult = { readonly text: string } | null

/** Client to server: the page of a rule in the language of what is said. */
export const rulePageRequest = 'wattproof/rulePage'
export interface RulePage {
  /** Markdown. */
  readonly text: string
}

/** Client to server: the pictures of a file as SVG text; null for a file that has none. */
export const picturesRequest = 'wattproof/pictures'
export interface PicturesParams {
  readonly textDocument: { readonly uri: string }
}
/** Parts of a picture that lead to a field have its JSON pointer in `data-field`, or `panel:` and an id. */
export type PicturesResult = {
  readonly title: string
  readonly pictures: readonly Picture[]
  /** What is not drawn, and what it would need. */
  readonly missing: readonly string[]
  /** Surfaces that panels can be compared on. */
  readonly surfaces: readonly string[]
} | null
export interface Picture {
  readonly title: string
  readonly svg: string
}

/** Client to server: every panel of the library on a surface of a system; the table is HTML. */
export const comparisonRequest = 'wattproof/comparison'
export interface ComparisonParams extends PicturesParams {
  readonly surface: string
}
export type ComparisonResult = { readonly pictures: readonly Picture[]; readonly table: string } | null

/** Client to server: the page for a customer as one HTML file; null for what is no system. */
export const pageRequest = 'wattproof/page'
export interface PageParams extends PicturesParams {
  readonly units: 'metric' | 'us'
  /** Of the records, in words, where the client knows it. */
  readonly revision: string | null
  /** The sheet to take along and fill in, in place of the page. */
  readonly form?: boolean
}
export type PageResult = { readonly html: string } | null

/** Client to server: the JSON pointer of the field at a position. */
export const fieldRequest = 'wattproof/field'
export interface FieldParams extends PicturesParams {
  readonly position: { readonly line: number; readonly character: number }
}
export type FieldResult = string | null

/** Client to server: where the field is that a part of a picture leads to, or the nearest group around it. */
export const placeRequest = 'wattproof/place'
export interface PlaceParams extends PicturesParams {
  readonly field: string
}
export type PlaceResult = {
  readonly uri: string
  readonly range: Range
} | null
export interface Range {
  readonly start: { readonly line: number; readonly character: number }
  readonly end: { readonly line: number; readonly character: number }
}

/** Client to server: a panel record beside its datasheet, row by row; null for a record that names no PDF. */
export const sheetRequest = 'wattproof/sheet'
export type SheetResult =
  | { readonly source: string; readonly problem: string }
  | {
      readonly source: string
      /** Address of the PDF, and the fingerprint of what it holds. */
      readonly file: string
      readonly sha256: string
      readonly pages: number
      /** The product of the sheet that the record is compared with. */
      readonly model: string | null
      readonly rows: readonly SheetRow[]
    }
  | null
export interface SheetRow {
  /** JSON pointer */
  readonly field: string
  readonly name: string
  /** null where the record lacks the field. */
  readonly typed: string | null
  readonly status: 'same' | 'other' | 'not found' | 'not typed'
  /** What the field should read, as the sheet prints it. */
  readonly printed: string | null
  readonly label: string
  /** From 1, and `[x, y, width, height]` in points from the top left of the page as shown; null where the sheet has no row for it. */
  readonly page: number | null
  readonly box: readonly [number, number, number, number] | null
}

/** Client to server: the edits that add a field which the sheet prints and the record lacks; null where that is no longer so. */
export const sheetAdditionRequest = 'wattproof/sheetAddition'
export interface SheetAdditionParams extends PicturesParams {
  readonly field: string
}
export type SheetAdditionResult = {
  readonly title: string
  readonly edits: readonly { readonly range: Range; readonly newText: string }[]
} | null

/** Client to server: a new panel record from a datasheet. */
export const draftRequest = 'wattproof/draft'
export interface DraftParams {
  /** Addresses of the PDF and of the folder that the record goes into. */
  readonly file: string
  readonly folder: string
  /** Which of the products of the sheet. */
  readonly model?: string
}
export type DraftResult =
  | { readonly problem: string }
  /** Several products, and none was named. */
  | { readonly models: readonly string[] }
  /** The id that its name makes. */
  | { readonly id: string; readonly text: string }

/** Client to server: what the records of a kind type, a row for each; null where there is none. */
export const tableRequest = 'wattproof/table'
export interface TableParams {
  readonly kind: string
  readonly format: 'csv' | 'markdown'
}
export type TableResult = { readonly text: string; readonly rows: number } | null

/** Client to server: all panels side by side, as Markdown; null where there is none. */
export const panelsRequest = 'wattproof/panels'
export type PanelsResult = { readonly text: string } | null

/** Client to server: a record for each row of a table, as a spreadsheet saves it. */
export const rowsRequest = 'wattproof/rows'
export interface RowsParams {
  readonly kind: string
  readonly text: string
  /** The name of the table, for messages and comments. */
  readonly from: string
  /** Address of the folder that the records go into. */
  readonly folder: string
}
export type RowsResult =
  | { readonly problem: string }
  | {
      readonly records: readonly { readonly name: string; readonly text: string }[]
      /** Columns that are not read, a sentence each. */
      readonly notes: readonly string[]
    }

/** Client to server: a climate record from a file of hourly weather, or guessed from a latitude. */
export const climateRequest = 'wattproof/climate'
export type ClimateParams = { readonly name: string; readonly text: string } | { readonly latitude: string }
export type ClimateResult = { readonly problem: string } | { readonly text: string }

/** Server to client, once pictures were asked for: what they show may have changed after a pause, in this file or another. */
export const changedNotification = 'wattproof/changed'

/** The section that `workspace/configuration` is asked for. */
export const settingsSection = 'wattproof'
export interface EditorSettings {
  readonly hints: {
    /** Show the unit of a number that was typed without one. */
    readonly units: boolean
    /** Show derived values behind the fields that they belong to. */
    readonly derived: boolean
  }
  /** Show above a record how many systems use it. */
  readonly codeLens: boolean
}
