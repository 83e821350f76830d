import type { Library } from '../../library/library.ts'
import { recordOfPath } from '../../records/kinds.ts'
import type { Beside } from '../../sheets/beside.ts'
import type { Bundle } from '../../wording/bundle.ts'
import type { Texts } from '../share.ts'
import { nameOf } from './said.ts'

/** What decides what is found in a record, beside what it says itself. */
export interface Around {
  readonly library: Library
  /** With the files of weather. */
  readonly texts: Texts
  readonly cwd: string
  /** The date, year-month-day, that prices and sheets of panels are held against. */
  readonly today: string
  readonly bundle?: Bundle | undefined
}

export interface Names {
  /** Of what is the same for all panels. */
  readonly shared: string
  /** Of what a record says, wherever it is. */
  ofText(path: string): string
  /**
   * Of all that decides what is found in a record: one name, the same findings. What a panel says is held against its kin, the settings,
   * the climates and its sheet; what is found in other records may depend on any record around them.
   */
  ofRecord(path: string, beside: Beside | undefined): string
}

/** The library must stay as it is as long as the names are used. */
export function namesIn({ library, texts, cwd, today, bundle }: Around): Names {
  const known = new Map<string, string>()
  const ofText = (path: string) => {
    let name = known.get(path)
    if (name === undefined) known.set(path, (name = nameOf(library.text(path))))
    return name
  }
  const listed = (paths: readonly string[]) => paths.map((path) => [path, ofText(path)])
  const isShared = (path: string) => ['library', 'climate'].includes(recordOfPath(path)!.kind)
  const weather = [...texts].flatMap(([path, text]) => (recordOfPath(path) ? [] : [[path, nameOf(text)]]))
  const shared = nameOf([cwd, bundle ?? null, weather, listed(library.paths().filter(isShared))])
  let all: string | undefined
  return {
    shared: nameOf([shared, today]),
    ofText,
    ofRecord(path, beside) {
      const what = recordOfPath(path)!
      // of two in one folder
      const settings = library.settings(path)?.path
      const own = [shared, path, ofText(path), settings]
      if (what.kind !== 'panel') return nameOf([own, (all ??= nameOf(listed(library.paths())))])
      const isUsed = library.hasSystems(path) ? library.usesOf({ path, ...what }).length > 0 : null
      const sheet = beside?.state === 'read' ? [beside.path, beside.sha256] : beside?.state
      return nameOf([own, today, isUsed, sheet, listed(library.kinOf({ path }))])
    },
  }
}
