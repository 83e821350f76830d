import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Panel } from '../records/records.generated.ts'
import type { FileText } from '../records/unread.ts'
import { readFile } from '../records/read.ts'
import { readWeather, type WeatherFile } from '../records/weather-file.ts'
import { createKin } from './kin.ts'
import { createIndex } from './index-of-records.ts'
import type { Library, ReferencePlace } from './library.ts'
import { createNotes, type Notes } from './notes.ts'
import { byPath } from './in-order.ts'
import { Recent } from './recent.ts'
import { referencesOf } from './references.ts'
import { createRoots } from './roots.ts'

/**
 * An empty library. Reading is lazy: a file is read when it is asked for.
 *
 * @param most    how many are kept as they were read; what else was not asked for lately is forgotten but for its text
 * @param atOnce  how many new records are read to find the family of one; where there are more, `gather` is to be called for each
 */
export function createLibrary(most = Infinity, atOnce = Infinity): Library {
  const texts = new Map<string, FileText>()
  const weatherTexts = new Map<string, string>()
  const weathers = new Map<string, WeatherFile | string>()
  const read = new Recent<ReadFile>(most)
  const notesOf = new Map<(file: ReadFile<'panel'>) => unknown, Notes<unknown>>()
  const roots = createRoots()
  const index = createIndex(() => texts.keys(), roots.of)
  let paths: readonly string[] | null = null
  /** Of the records that name others. */
  let naming: readonly string[] | null = null
  let opened: readonly string[] = []
  let version = 0
  const kin = createKin(gathered, atOnce)
  let uses: Map<string, ReferencePlace[]> | null = null

  const library: Library = {
    get version() {
      return version
    },
    put(path, text) {
      if (/\.epw$/i.test(path)) return putWeather(path, typeof text === 'string' ? text : '')
      const kind = recordOfPath(path)?.kind
      if (!kind || texts.get(path) === text) return
      const isNew = !texts.has(path)
      texts.set(path, text)
      if (kind === 'panel') kin.put(path)
      changed(path, kind)
      if (!isNew) return
      paths = naming = null
      if (kind === 'library') roots.put(path)
      if (kind === 'library') index.forget()
      else index.put(path)
    },
    drop(path) {
      kin.drop(path)
      if (!texts.delete(path)) return
      changed(path, recordOfPath(path)?.kind)
      paths = naming = null
      if (isSettings(path)) roots.drop(path)
      if (isSettings(path)) index.forget()
      else index.drop(path)
    },
    setFolders(folders) {
      opened = folders
      roots.setFolders(folders)
      index.forget()
      version++
    },
    file(path) {
      const known = read.get(path)
      if (known) return known
      const file = readNow(path)
      if (file) read.set(path, file)
      return file
    },
    text: (path) => texts.get(path),
    paths: () => (paths ??= [...texts.keys()].sort(byPath)),
    ofKind<K extends RecordKind>(kind: K, near: string) {
      return filesOf<K>(index.ofKind(kind, roots.of(near)))
    },
    byId<K extends RecordKind>(kind: K, id: string, near: string) {
      return filesOf<K>(index.byId(kind, id, roots.of(near)))
    },
    gather: kin.gather,
    kinKeys: kin.keys,
    kinKeysFrom: kin.keysFrom,
    kinOf({ path }) {
      const root = roots.of(path)
      return kin.of(path).filter((other) => roots.of(other) === root)
    },
    note(make) {
      if (!notesOf.has(make)) notesOf.set(make, createNotes(mostNotes))
    },
    noted<T>(path: string, make: (file: ReadFile<'panel'>) => T) {
      library.note(make)
      const notes = notesOf.get(make) as Notes<T>
      if (!notes.has(path)) {
        const file = library.file(path)
        if (file) makeNotes(file)
      }
      return notes.get(path)
    },
    forgetNotes() {
      for (const notes of notesOf.values()) notes.clear()
    },
    settings(path) {
      const own = roots.settingsOf(roots.of(path))
      return own === undefined ? undefined : (library.file(own) as ReadFile<'library'> | undefined)
    },
    references: referencesOf,
    usesOf(file) {
      uses ??= gatherUses()
      const root = roots.of(file.path)
      return (uses.get(`${file.kind} ${file.id}`) ?? []).filter((use) => roots.of(use.file.path) === root)
    },
    weather(path) {
      const text = weatherTexts.get(path)
      if (text === undefined) return undefined
      const known = weathers.get(path) ?? (text === '' ? 'is not there' : readWeather(text))
      weathers.set(path, known)
      return known
    },
    copy() {
      const other = createLibrary(most)
      other.setFolders(opened)
      for (const [path, text] of [...texts, ...weatherTexts]) other.put(path, text)
      return other
    },
    hasSystems: (near) => index.ofKind('system', roots.of(near)).length > 0,
  }
  return library

  function readNow(path: string): ReadFile | undefined {
    const text = texts.get(path)
    if (text === undefined) return undefined
    const currency = isSettings(path) ? undefined : library.settings(path)?.record.currency?.value
    const file = readFile(path, text, currency) ?? undefined
    if (file) makeNotes(file)
    return file
  }

  /** Of most panels of a large library nothing is asked but their kin and their notes, so that what was read lately stays. */
  function gathered(path: string): Panel | undefined {
    const known = read.get(path)
    const file = known ?? readNow(path)
    if (file && !known) read.setWhereRoom(path, file)
    return (file as ReadFile<'panel'> | undefined)?.record
  }

  function putWeather(path: string, text: string) {
    if (weatherTexts.get(path) === text) return
    weatherTexts.set(path, text)
    weathers.delete(path)
    version++
  }

  function changed(path: string, kind: RecordKind | undefined) {
    version++
    read.delete(path)
    for (const notes of notesOf.values()) notes.delete(path)
    if (namingKinds.has(kind)) uses = null
    if (kind === 'climate' && isUsual(path)) library.forgetNotes()
    // a currency that settings name is that of all prices
    if (kind !== 'library') return
    read.clear()
    library.forgetNotes()
  }

  /** Whether settings name a climate for all records. */
  function isUsual(path: string): boolean {
    return library.settings(path)?.record.site.climate?.value === recordOfPath(path)?.id
  }

  /** All that is noted of panels is, as long as one is at hand. */
  function makeNotes(file: ReadFile) {
    if (file.kind !== 'panel') return
    for (const [make, notes] of notesOf)
      if (!notes.has(file.path)) notes.set(file.path, make(file as ReadFile<'panel'>))
  }

  function filesOf<K extends RecordKind>(found: readonly string[]) {
    return found.flatMap((path) => library.file(path) ?? []) as unknown as readonly ReadFile<K>[]
  }

  function gatherUses() {
    const all = new Map<string, ReferencePlace[]>()
    naming ??= library.paths().filter((path) => namingKinds.has(recordOfPath(path)?.kind))
    for (const path of naming)
      for (const use of referencesOf(library.file(path)!)) {
        const key = `${use.kind} ${use.field.value}`
        const others = all.get(key)
        if (others) others.push(use)
        else all.set(key, [use])
      }
    return all
  }
}

/** How many notes of a kind are at hand as they were made: those of a few families, which are asked for again and again. */
const mostNotes = 300

const namingKinds: ReadonlySet<RecordKind | undefined> = new Set<RecordKind>(['system', 'library'])
const isSettings = (path: string) => recordOfPath(path)?.kind === 'library'
