import type { Connection } from 'vscode-languageserver'
import { ResponseError } from './lsp.ts'

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
      connection.console.error(error instanceof Error ? (error.stack ?? error.message) : String(error))
      return otherwise(params)
    }
  }
}
