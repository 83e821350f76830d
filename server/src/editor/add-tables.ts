import type { Connection } from 'vscode-languageserver'
import { dayOf } from '../records/dates.ts'
import { recordOfPath } from '../records/kinds.ts'
import type { ReadFile } from '../records/read-file.ts'
import { climateFromLatitude, climateFromWeather, isLatitude } from '../review/climate-draft.ts'
import { draftsFromRows } from '../rows/drafts-from-rows.ts'
import { caught } from './caught.ts'
import { panelsCompared } from './compare-panels.ts'
import {
  climateRequest,
  panelsRequest,
  rowsRequest,
  tableRequest,
  type ClimateParams,
  type ClimateResult,
  type PanelsResult,
  type RowsParams,
  type RowsResult,
  type TableParams,
} from './protocol.ts'
import type { Session } from './session.ts'
import { tableOf } from './table.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phraseInWords, sayIn } from '../wording/phrase.ts'

/** Answers what commands ask about records as tables, and about records that are made of other files. */
export function addTables(connection: Connection, session: Session, bundle: Bundle | undefined): void {
  const { workspace, pathOf, isBesides, indexed } = session
  const say = sayIn(bundle)

  connection.onRequest(
    tableRequest,
    caught(
      connection,
      async ({ kind, format }: TableParams) => {
        await indexed()
        return tableOf(filesOf(kind), format)
      },
      () => null,
    ),
  )
  connection.onRequest(
    panelsRequest,
    caught(
      connection,
      async (): Promise<PanelsResult> => {
        await indexed()
        const panels = filesOf('panel') as readonly ReadFile<'panel'>[]
        return panels.length > 0 ? { text: panelsCompared(workspace.library, panels, dayOf(new Date()), bundle) } : null
      },
      () => null,
    ),
  )
  connection.onRequest(
    rowsRequest,
    caught(
      connection,
      async ({ kind, text, from, folder }: RowsParams): Promise<RowsResult> => {
        const beside = pathOf(`${folder}/new.${kind}.yaml`)
        const record = beside === null ? null : recordOfPath(beside)
        if (beside === null || record === null) return { problem: say`There is no record of kind ${kind}.` }
        await indexed()
        const saved = workspace.library.settings(beside)?.record.columns ?? {}
        const made = draftsFromRows(record.kind, text, from, saved, bundle)
        if ('problem' in made) return { problem: phraseInWords(made.problem, bundle) }
        const notes = made.notes.map((note) => phraseInWords(note, bundle))
        return { records: made.drafts.map(({ name, text }) => ({ name, text })), notes }
      },
      () => ({ problem: say`The table could not be read.` }),
    ),
  )
  connection.onRequest(
    climateRequest,
    caught(
      connection,
      (params: ClimateParams): ClimateResult => {
        if ('text' in params) {
          const made = climateFromWeather(params.name, params.text, bundle)
          return 'problem' in made ? { problem: phraseInWords(made.problem, bundle) } : made
        }
        return isLatitude(params.latitude)
          ? { text: climateFromLatitude(Number(params.latitude), bundle) }
          : { problem: say`A number of degrees from -66 to 66 is expected, south negative.` }
      },
      () => ({ problem: say`The weather could not be read.` }),
    ),
  )

  /** A draft that nobody has saved is in no folder yet. */
  function filesOf(kind: string): readonly ReadFile[] {
    const paths = workspace.library.paths().filter((path) => !isBesides(path) && !path.startsWith('untitled:'))
    const ofKind = paths.filter((path) => recordOfPath(path)?.kind === kind)
    return ofKind.flatMap((path) => workspace.library.file(path) ?? []).filter(({ unread }) => !unread)
  }
}
