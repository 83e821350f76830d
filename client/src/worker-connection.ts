import { BrowserMessageReader, BrowserMessageWriter, type MessageTransports } from 'vscode-languageclient/browser'
import { lockPrefix } from '../../server/src/editor/protocol.ts'

/**
 * Starts a language server in a worker. A worker that dies sends no event, so the server holds a lock as long as it lives; an
 * error that nothing caught ends it, as it would end a process. Both close the connection, and the client starts another.
 */
export function startWorker(address: string): MessageTransports {
  const lock = lockPrefix + crypto.randomUUID()
  const worker = new Worker(address, { name: lock })
  const gone = new Promise<void>((resolve) => {
    const end = () => {
      worker.terminate()
      resolve()
    }
    worker.addEventListener('error', (event) => {
      event.stopImmediatePropagation() // the connection would take it for an error of its own and give up
      console.error(`the language server failed: ${event.message}`)
      end()
    })
    // by its first message the worker has asked for the lock, so this waits until it lets go
    const watch = () => {
      navigator.locks?.request(lock, end).catch(unwatched)
    }
    worker.addEventListener('message', watch, { once: true })
  })
  return { reader: new WorkerReader(worker, gone), writer: new BrowserMessageWriter(worker) }
}

/** The server works on, but its end would go unnoticed. */
const unwatched = (error: unknown) => console.error('the language server is not watched:', error)

class WorkerReader extends BrowserMessageReader {
  constructor(
    private readonly worker: Worker,
    gone: Promise<void>,
  ) {
    super(worker)
    gone.then(() => this.fireClose()).catch(unwatched)
  }

  /** A client that stops has no more use for the worker. */
  override dispose(): void {
    super.dispose()
    this.worker.terminate()
  }
}
