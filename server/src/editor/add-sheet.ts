import type { Connection } from 'vscode-languageserver'
import { dayOf } from '../records/dates.ts'
import { about } from './about.ts'
import { caught } from './caught.ts'
import { draftFromSheet } from './draft-from-sheet.ts'
import {
  draftRequest,
  sheetAdditionRequest,
  sheetRequest,
  type DraftParams,
  type SheetAdditionParams,
} from './protocol.ts'
import type { Session } from './session.ts'
import { sheetAddition, sheetShown } from './show-sheet.ts'
import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** Answers what a view asks about the datasheet of a record. */
export function addSheet(connection: Connection, session: Session, bundle: Bundle | undefined): void {
  connection.onRequest(
    sheetRequest,
    about(connection, session, async (here) => {
      await session.sheets.whenRead(here.path)
      return sheetShown(session.here(here.uri) ?? here)
    }),
  )
  connection.onRequest(
    sheetAdditionRequest,
    about(connection, session, (here, { field }: SheetAdditionParams) => sheetAddition(here, field)),
  )
  connection.onRequest(
    draftRequest,
    caught(
      connection,
      async (params: DraftParams) =>
        draftFromSheet(await session.sheets.at(params.file), params, { today: dayOf(new Date()), bundle }),
      () => ({ problem: sayIn(bundle)`The sheet could not be read.` }),
    ),
  )
}
