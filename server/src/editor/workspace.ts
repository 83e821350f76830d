import { checkFile } from '../check/check.ts'
import { findingsFromNotes } from '../check/from-notes.ts'
import type { Checked } from '../check/checked.ts'
import type { Finding } from '../findings/finding.ts'
import { createLibrary } from '../library/create.ts'
import type { Library } from '../library/library.ts'
import { Recent } from '../library/recent.ts'
import { usersOf } from '../library/users-of.ts'
import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { FileText } from '../records/unread.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Beside } from '../sheets/beside.ts'
import type { Bundle } from '../wording/bundle.ts'

/** The library with a memory of what was checked: one parse and one check per version of a file. */
export interface Workspace {
  readonly library: Library
  put(path: string, text: FileText): void
  /** A file of hourly weather; the empty text where there is none. */
  putWeather(path: string, text: string): void
  drop(path: string): void
  /** Folders opened side by side. */
  setFolders(folders: readonly string[]): void
  /** null for a file that is none of ours */
  check(path: string): Checked | null
  /** What a check would find in a panel record, without one; null where only that can say. */
  foundFromNotes(path: string): readonly Finding[] | null
  /** The same object until a check may find something else: what is known by it need not keep the check itself. */
  stampOf(path: string): object
  /** Something beside a file has changed. */
  recheck(path: string): void
  /** What is beside all files has changed. */
  recheckAll(): void
  /** Forgets what depends on the changes since the last call. Null when nothing changed. */
  takeStale(): Stale | null
}

/** Files that must be looked at again although they did not change themselves: those, or all. */
export type Stale = ReadonlySet<string> | 'all'

/** Records that are kept as they were read. */
const mostRead = 150
/** New records that are read at once where the family of one is asked for; the rest is gathered while nobody waits. */
export const readAtOnce = 64
/** Checks that are kept: those of open files, and of what was looked at beside them. */
const mostChecked = 200

/**
 * @param onMistake  hears of a mistake of our own in a file, with the places in the program on the way to it
 * @param bundle     the words of another language
 */
export function createWorkspace(
  today: () => string,
  sheetOf?: (path: string) => Beside | undefined,
  onMistake?: (path: string, trace: string) => void,
  bundle?: Bundle,
): Workspace {
  const library = createLibrary(mostRead, readAtOnce)
  const known = new Recent<Checked>(mostChecked)
  const stamps = new Map<string, object>()
  const changed = new Set<string>()
  /** Panels of the families that changed records were in. */
  const left = new Set<string>()
  /** Records that a changed system or settings file named before or names now. */
  const named = new Set<string>()
  /** Systems of which only one year was worked out. */
  const quick = new Set<string>()
  // one record at a time: the others of its family would keep somebody's hover waiting
  const fromNotes = findingsFromNotes(library, today, () => false, bundle)
  let day = today()
  let all = false

  return {
    library,
    put(path, text) {
      const before = library.file(path)
      if (before && !before.unread && before.tree.text === text) return
      const namedBefore = before ? namedBy(before) : []
      if (before) leaveFamily(before)
      library.put(path, text)
      if (before) difference(namedBefore, namedBy(library.file(path)!)).forEach((one) => named.add(one))
      forget(path, before === undefined)
    },
    putWeather(path, text) {
      library.put(path, text)
      forgetAll()
    },
    drop(path) {
      const before = library.file(path)
      if (!before) return
      leaveFamily(before)
      library.drop(path)
      forget(path, true)
    },
    setFolders(folders) {
      library.setFolders(folders)
      forgetAll()
    },
    check(path) {
      const before = known.get(path)
      if (before) return before
      // one year is enough while somebody types; the pause after it has time for the others
      const isTyping = changed.size > 0 && recordOfPath(path)?.kind === 'system'
      const checked = checkFile(library, path, {
        today: today(),
        bundle,
        ...(sheetOf && { sheetOf }),
        ...(isTyping && { years: 1 }),
      })
      if (checked) known.set(path, checked)
      for (const { trace } of checked?.findings ?? []) if (trace !== undefined) onMistake?.(path, trace)
      if (isTyping) quick.add(path)
      return checked
    },
    foundFromNotes(path) {
      if (day !== today()) {
        day = today()
        library.forgetNotes()
      }
      return fromNotes(path)
    },
    stampOf(path) {
      const stamp = stamps.get(path) ?? {}
      stamps.set(path, stamp)
      return stamp
    },
    recheck(path) {
      forgetCheck(path)
      changed.add(path)
      left.add(path)
    },
    recheckAll: forgetAll,
    takeStale() {
      if (changed.size === 0 && !all) return null
      const users: Stale = all
        ? 'all'
        : staleOf(new Set([...named, ...left, ...quick, ...[...changed].flatMap((path) => usersOf(library, path))]))
      if (users === 'all') forgetChecks()
      else users.forEach(forgetCheck)
      changed.clear()
      left.clear()
      named.clear()
      quick.clear()
      all = false
      return users
    },
  }

  /** Settings hold for all records, and a record that comes or goes may be named anywhere. */
  function forget(path: string, isListChange: boolean) {
    changed.add(path)
    forgetCheck(path)
    if (!isListChange && recordOfPath(path)?.kind !== 'library') return
    forgetAll()
  }

  function forgetAll() {
    all = true
    forgetChecks()
  }

  function forgetCheck(path: string) {
    known.delete(path)
    stamps.delete(path)
  }

  function forgetChecks() {
    known.clear()
    stamps.clear()
  }

  /** Settings that name a changed climate hold for all records. */
  function staleOf(users: ReadonlySet<string>): Stale {
    return [...users].some((path) => recordOfPath(path)?.kind === 'library') ? 'all' : users
  }

  function namedBy(file: ReadFile): string[] {
    return library.references(file).flatMap(({ kind, field }) => {
      return library.byId<RecordKind>(kind, field.value, file.path).map(({ path }) => path)
    })
  }

  function leaveFamily(file: ReadFile) {
    if (file.kind === 'panel') for (const one of library.kinOf(file)) left.add(one)
  }
}

/** What only one of two lists has. */
function difference(one: readonly string[], other: readonly string[]): string[] {
  return [...one.filter((item) => !other.includes(item)), ...other.filter((item) => !one.includes(item))]
}
