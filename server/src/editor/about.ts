import type { Connection } from 'vscode-languageserver'
import { caught } from './caught.ts'
import type { Here } from './here.ts'
import type { PicturesParams } from './protocol.ts'
import { ready } from './pull.ts'
import type { Session } from './session.ts'

/** Answers a question of the view about one file; what a record names is known first. null for what is no record, and where it fails. */
export const about = <P extends PicturesParams, R>(
  connection: Connection,
  session: Session,
  answer: (here: Here, params: P) => R,
) =>
  caught(
    connection,
    async (params: P) => {
      await ready(session, params.textDocument.uri)
      const here = session.here(params.textDocument.uri)
      return here ? answer(here, params) : null
    },
    () => null,
  )
