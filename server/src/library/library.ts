import type { RecordKind } from '../records/field-info.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { WeatherFile } from '../records/weather-file.ts'
import type { FileText } from '../records/unread.ts'
import type { Field } from '../records/field.ts'

/** A place where one record names another. */
export interface ReferencePlace {
  readonly file: ReadFile
  readonly kind: RecordKind
  /** The id as typed, with its place. */
  readonly field: Field<string>
}

/**
 * All records of a folder, or of several. It is given text and touches no file; what is put last wins, so an editor puts
 * its unsaved buffers over what is on disk. A library is the nearest folder with a `wattproof.yaml`, or else the
 * outermost that was opened as a folder; ids resolve inside it.
 */
export interface Library {
  put(path: string, text: FileText): void
  drop(path: string): void
  /** Folders that are opened side by side, each ending in a slash: ids of one are not those of another. */
  setFolders(folders: readonly string[]): void
  file(path: string): ReadFile | undefined
  /** What was put, without reading it. */
  text(path: string): FileText | undefined
  /** Of all records and settings, in order. */
  paths(): readonly string[]
  /** The records of a kind in the library that `near` belongs to, in path order. */
  ofKind<K extends RecordKind>(kind: K, near: string): readonly ReadFile<K>[]
  /** Records of that id; more than one is an ambiguity that the user must hear of. */
  byId<K extends RecordKind>(kind: K, id: string, near: string): readonly ReadFile<K>[]
  /** Paths of panels of the same library that may be of one family with this one: all but one of what a family shares is alike. */
  kinOf(file: Pick<ReadFile, 'path'>): readonly string[]
  /** What a panel shares with its kin, as texts: those with one in common. It is read for them if need be. */
  kinKeys(path: string): readonly string[]
  /** Where these come from for panels that are not to be read for them. */
  kinKeysFrom(known: (path: string) => readonly string[] | undefined): void
  /** Reads a panel, so that it is known as one of its family from then on. */
  gather(path: string): void
  /** From now on this is made of each panel when it is read, so that it need not be read again for it. */
  note(make: (file: ReadFile<'panel'>) => unknown): void
  /** What is made of a panel and of what settings name for all of them, kept until that may read otherwise: plain data that JSON can hold, and little of it, for it is kept of every panel. */
  noted<T>(path: string, make: (file: ReadFile<'panel'>) => T): T | undefined
  /** What was made of panels is made again when it is next asked for. */
  forgetNotes(): void
  /** The settings file that governs `path`. */
  settings(path: string): ReadFile<'library'> | undefined
  /** Every record id that a file names. */
  references(file: ReadFile): readonly ReferencePlace[]
  /** Every place that names this record: in systems, and in the settings of its library. */
  usesOf(file: Pick<ReadFile, 'path' | 'kind' | 'id'>): readonly ReferencePlace[]
  /**
   * A file of hourly weather: what it holds, or what is wrong with it in words that follow its name; undefined where nobody
   * has read it. It is put like a record, with the empty text where there is none.
   */
  weather(path: string): WeatherFile | string | undefined
  /** Whether the library that a path belongs to has a system. */
  hasSystems(near: string): boolean
  /** Another library that holds the same, and is changed on its own. */
  copy(): Library
  /** Grows with every change; caches compare it. */
  readonly version: number
}
