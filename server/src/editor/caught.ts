import type { Connection } from 'vscode-languageserver'
import { ResponseError } from './lsp.ts'

/** Work that nobody waits for: what it throws is logged, at once or later, and the server goes on. */
export function inBackground(connection: Connection, work: () => unknown): void {
  const log = (error: unknown) => connection.console.error(inFull(error))
  try {
    Promise.resolve(work()).catch(log)
  } catch (error) {
    log(error)
  }
}

/**
 * Each request is caught alone: one that fails is logged and answered with what `otherwise` gives, and the server goes on.
 * A refusal with a reason is an answer.
 */
export function caught<P, R, E>(connection: Connection, answer: (params: P) => R, otherwise: (params: P) => E) {
  return async (params: P): Promise<Awaited<R> | E> => {
    try {
      return await answer(params)
    } catch (error) {
      if (error instanceof ResponseError) throw error
      connection.console.error(inFull(error))
      return otherwise(params)
    }
  }
}

const inFull = (error: unknown) => (error instanceof Error ? (error.stack ?? error.message) : String(error))
