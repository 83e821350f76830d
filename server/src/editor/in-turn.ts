import type { Connection, MessageStrategy } from 'vscode-languageserver'
import { ErrorCodes, ResponseError } from './lsp.ts'

type Message = Parameters<MessageStrategy['handleMessage']>[0]

/** A request that comes at the wrong time is handed on under this name, so that the connection answers it with the error. */
const refused = 'wattproof/refused'

interface Refusal {
  readonly code: number
  readonly message: string
}

/**
 * Keeps a client to the order of the Language Server Protocol 3.17, "Server lifecycle": nothing before `initialize`, which comes
 * once, and only `exit` after `shutdown`. A request out of turn is answered with the error that the protocol names, a
 * notification is dropped.
 */
export function inTurn(): MessageStrategy {
  let [greeted, ended] = [false, false]
  return {
    handleMessage(message, next) {
      const { method, id } = message as Message & { readonly method?: string; readonly id?: number | string }
      if (method === undefined || method === 'exit') return next(message)
      const refusal = refusalOf(method)
      if (refusal === null) {
        if (method === 'initialize') greeted = true
        if (method === 'shutdown') ended = true
        return next(message)
      }
      if (id !== undefined) return next({ ...message, method: refused, params: refusal } as Message)
    },
  }

  function refusalOf(method: string): Refusal | null {
    if (ended)
      return { code: ErrorCodes.InvalidRequest, message: 'The server is shutting down; it only takes exit now.' }
    if (method === 'initialize')
      return greeted ? { code: ErrorCodes.InvalidRequest, message: 'The server is initialized already.' } : null
    return greeted ? null : { code: ErrorCodes.ServerNotInitialized, message: 'The server is not initialized yet.' }
  }
}

/** Answers what is out of turn. */
export function addRefusals(connection: Connection): void {
  connection.onRequest(refused, ({ code, message }: Refusal) => new ResponseError(code, message))
}
