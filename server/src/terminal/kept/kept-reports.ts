import { recordOfPath } from '../../records/kinds.ts'
import type { Beside } from '../../sheets/beside.ts'
import type { SheetsBeside } from '../beside.ts'
import { reportFrom, type FileReport, type Findings } from '../file-report.ts'
import type { Pack } from './pack.ts'
import { kinKeysIn, parsed, saidIn, type Said } from './said.ts'
import { namesIn, type Around } from './what-it-depends-on.ts'

/** So many records are checked sooner than a library is read. */
const few = 100

/** What was found in a run before in the same records, with the same around them. */
export interface KeptReports {
  /** null where it is not known. */
  report(path: string, sheets: SheetsBeside): Promise<FileReport | null>
  /** @param source  where the record says its sheet is */
  keep(path: string, source: string | null, beside: Beside | undefined, report: FileReport): void
}

/** @param count  how many records are to be checked */
export function keptReports(pack: Pack, around: Around, count: number): KeptReports {
  const { library, cwd } = around
  const names = namesIn(around)
  // where all is checked anew, it is quicker to read the panels one after the other
  const isAnew = pack.get(names.shared) === undefined && count > few
  library.kinKeysFrom((path) => (isAnew ? undefined : kinKeysIn(pack, names.ofText(path))))
  return {
    async report(path, sheets) {
      if (isAnew) return null
      const source = isPanel(path) ? saidIn(pack, names.ofText(path))?.[0] : null
      if (source === undefined) return null
      const beside = await sheets.at(path, source)
      const found = parsed<Partial<Findings>>(pack.get(names.ofRecord(path, beside)))
      return found?.findings && found.accepted ? reportFrom(library, path, found as Findings, cwd) : null
    },
    keep(path, source, beside, { findings, accepted, brokenSettings }) {
      // what a mistake of our own, or a file or sheet that was not read led to may be otherwise next time
      const isUnread = typeof library.text(path) !== 'string'
      const isSheetUnread = beside?.state === 'read' && beside.sheet.problem !== null
      if (isUnread || isSheetUnread || findings.some(({ trace }) => trace !== undefined)) return
      pack.set(names.shared, asciiJson(null))
      const said: Said = [source, ...library.kinKeys(path)]
      if (isPanel(path)) pack.set(names.ofText(path), asciiJson(said))
      pack.set(names.ofRecord(path, beside), asciiJson({ findings, accepted, brokenSettings } satisfies Findings))
    },
  }
}

const isPanel = (path: string) => recordOfPath(path)?.kind === 'panel'

const asciiJson = (data: unknown) =>
  JSON.stringify(data).replace(/[^\0-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
