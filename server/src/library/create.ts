import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { FileText } from '../records/unread.ts'
import { readFile } from '../records/read.ts'
import { readWeather, type WeatherFile } from '../records/weather-file.ts'
import { createKin } from './kin.ts'
import type { Library, ReferencePlace } from './library.ts'
import { referencesOf } from './references.ts'

/** An empty library. Reading is lazy: a file is read when it is first asked for. */
export function createLibrary(): Library {
  const texts = new Map<string, FileText>()
  const weatherTexts = new Map<string, string>()
  const weathers = new Map<string, WeatherFile | string>()
  const read = new Map<string, ReadFile>()
  let folders: readonly string[] = []
  let roots: readonly string[] = []
  let settingsPaths: ReadonlyMap<string, string> = new Map()
  let version = 0
  let byKind = new Map<RecordKind, readonly string[]>()
  const kin = createKin((path) => (library.file(path) as ReadFile<'panel'> | undefined)?.record)
  let uses: Map<string, ReferencePlace[]> | null = null

  const library: Library = {
    get version() {
      return version
    },
    put(path, text) {
      if (/\.epw$/i.test(path)) return putWeather(path, typeof text === 'string' ? text : '')
      if (!recordOfPath(path) || texts.get(path) === text) return
      const isNew = !texts.has(path)
      texts.set(path, text)
      if (recordOfPath(path)?.kind === 'panel') kin.put(path)
      changed(path, isNew)
    },
    drop(path) {
      kin.drop(path)
      if (texts.delete(path)) changed(path, true)
    },
    setFolders(list) {
      folders = [...list].sort((a, b) => a.length - b.length)
      version++
    },
    file(path) {
      const known = read.get(path)
      if (known) return known
      const text = texts.get(path)
      if (text === undefined) return undefined
      const currency = isSettings(path) ? undefined : library.settings(path)?.record.currency?.value
      const file = readFile(path, text, currency) ?? undefined
      if (file) read.set(path, file)
      return file
    },
    files: () => [...texts.keys()].sort(byPath).flatMap((path) => library.file(path) ?? []),
    ofKind<K extends RecordKind>(kind: K, near: string) {
      const root = rootOf(near)
      const paths = (byKind.get(kind) ?? listed(kind)).filter((path) => rootOf(path) === root)
      return paths.flatMap((path) => library.file(path) ?? []) as unknown as readonly ReadFile<K>[]
    },
    byId<K extends RecordKind>(kind: K, id: string, near: string) {
      const root = rootOf(near)
      const paths = (byKind.get(kind) ?? listed(kind)).filter(
        // most paths do not even contain the id, which is told much sooner
        (path) => path.includes(id) && recordOfPath(path)?.id === id && rootOf(path) === root,
      )
      return paths.flatMap((path) => library.file(path) ?? []) as unknown as readonly ReadFile<K>[]
    },
    kinOf({ path }) {
      const root = rootOf(path)
      const paths = kin.of(path).filter((other) => rootOf(other) === root)
      return paths.flatMap((other) => library.file(other) ?? []) as unknown as readonly ReadFile<'panel'>[]
    },
    settings(path) {
      const own = settingsPaths.get(rootOf(path))
      return own === undefined ? undefined : (library.file(own) as ReadFile<'library'> | undefined)
    },
    references: referencesOf,
    usesOf(file) {
      uses ??= gatherUses()
      return (uses.get(`${file.kind} ${file.id}`) ?? []).filter((use) => rootOf(use.file.path) === rootOf(file.path))
    },
    weather(path) {
      const text = weatherTexts.get(path)
      if (text === undefined) return undefined
      const known = weathers.get(path) ?? (text === '' ? 'is not there' : readWeather(text))
      weathers.set(path, known)
      return known
    },
    hasSystems(near) {
      const root = rootOf(near)
      return (byKind.get('system') ?? listed('system')).some((path) => rootOf(path) === root)
    },
  }
  return library

  function putWeather(path: string, text: string) {
    if (weatherTexts.get(path) === text) return
    weatherTexts.set(path, text)
    weathers.delete(path)
    version++
  }

  function changed(path: string, list: boolean) {
    version++
    read.delete(path)
    if (naming.some((kind) => kind === recordOfPath(path)?.kind)) uses = null
    if (isSettings(path)) read.clear()
    if (!list) return
    byKind = new Map()
    if (!isSettings(path)) return
    settingsPaths = new Map([...texts.keys()].filter(isSettings).map((p) => [folderOf(p), p]))
    roots = [...settingsPaths.keys()].sort((a, b) => b.length - a.length)
  }

  function listed(kind: RecordKind): readonly string[] {
    const paths = [...texts.keys()].filter((path) => recordOfPath(path)?.kind === kind).sort(byPath)
    byKind.set(kind, paths)
    return paths
  }

  /** The folder of the nearest `wattproof.yaml` upward, or else the outermost opened one; '' where there is neither. */
  function rootOf(path: string): string {
    const above = (root: string) => path.startsWith(root)
    return roots.find(above) ?? folders.find(above) ?? ''
  }

  function gatherUses() {
    const all = new Map<string, ReferencePlace[]>()
    for (const path of naming.flatMap((kind) => byKind.get(kind) ?? listed(kind))) {
      const file = library.file(path)
      for (const use of file ? referencesOf(file) : []) {
        const key = `${use.kind} ${use.field.value}`
        all.set(key, [...(all.get(key) ?? []), use])
      }
    }
    return all
  }
}

/** The kinds of record that name others. */
const naming = ['system', 'library'] as const

const isSettings = (path: string) => recordOfPath(path)?.kind === 'library'
const folderOf = (path: string) => path.slice(0, Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1)
const byPath = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
