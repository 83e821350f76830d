import type { Connection } from 'vscode-languageserver'
import { dayOf } from '../records/dates.ts'
import { caught } from './caught.ts'
import { changesPage } from './changes.ts'
import {
  changesRequest,
  putPanelRequest,
  type ChangesParams,
  type ChangesResult,
  type PutPanelParams,
  type PutPanelResult,
} from './protocol-changes.ts'
import { panelPut } from './put-panel.ts'
import type { Session } from './session.ts'

/** Answers what commands ask about changes: what those since a revision do, and how to put a panel on a surface. */
export function addChanges(connection: Connection, session: Session): void {
  const { workspace, pathOf, client, sheets, indexed, gathered } = session
  connection.onRequest(
    changesRequest,
    caught(
      connection,
      async ({ since, before }: ChangesParams): Promise<ChangesResult> => {
        await gathered()
        const texts = before.flatMap(({ uri, text }) => {
          const path = pathOf(uri)
          return path === null ? [] : [[path, text] as const]
        })
        const today = { today: dayOf(new Date()), bundle: client.bundle, sheetOf: sheets.of }
        const text = await changesPage(workspace.library, new Map(texts), today, since)
        return text === null ? null : { text }
      },
      () => null,
    ),
  )
  connection.onRequest(
    putPanelRequest,
    caught(
      connection,
      async (chosen: PutPanelParams): Promise<PutPanelResult> => {
        await indexed() // of a menu's system, which nobody may have opened
        const here = session.here(chosen.textDocument.uri)
        return here ? panelPut(here, chosen) : null
      },
      () => null,
    ),
  )
}
