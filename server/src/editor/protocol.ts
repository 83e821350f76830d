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
export type ReadResult = string | { readonly because: string } | null

/** Client to server: a commented record to be filled in, null for a kind that does not exist. */
export const skeletonRequest = 'wattproof/skeleton'
export interface SkeletonParams {
  readonly kind: string
}
export type SkeletonResult = { readonly text: string } | null

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
