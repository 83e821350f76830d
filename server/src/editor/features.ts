import type { Connection } from 'vscode-languageserver'
import type { Here } from './here.ts'
import type { Session } from './session.ts'

/** Hands each request to its feature. */
export function addFeatures(connection: Connection, session: Session): void {
  void connection
  void session
}

export type Answer<P, R> = (here: Here, params: P) => R
