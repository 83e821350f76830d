import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser'
import type { Sheets } from '../reader/kept.ts'
import { mostBytes } from '../reader/limits.ts'
import type { Client } from './client.ts'
import { inTurn } from './in-turn.ts'
import { bytesRequest, lockPrefix, type BytesParams, type BytesResult } from './protocol.ts'
import type { Language, Texts } from '../wording/bundle.ts'
import type { Pictures } from './pictures.ts'
import { serve } from './server.ts'
import { webSheets } from './web-sheets.ts'

/** A web worker beside the editor in a browser; files come from the client. */
const worker = self as unknown as Worker & { readonly name: string }

// held as long as this worker lives: a client that gets it knows that the worker is gone
const lock = worker.name.slice(worker.name.lastIndexOf(lockPrefix))
if (lock.startsWith(lockPrefix))
  navigator.locks
    ?.request(lock, () => new Promise(() => {}))
    .catch((error: unknown) => console.error('the client will not notice the end of this worker:', error))

// what nothing caught ends a process, and is to end a worker too: thrown here, its client hears of it
self.addEventListener('unhandledrejection', ({ reason }) => {
  throw reason
})

const connection = createConnection(new BrowserMessageReader(worker), new BrowserMessageWriter(worker), {
  messageStrategy: inTurn(),
})
serve(connection, null, sheetsOf, null, loadPictures, loadWords)

function sheetsOf({ options: { sheetReader } }: Client): Sheets | null {
  if (sheetReader === undefined) return null
  const read = (path: string) =>
    connection.sendRequest<BytesResult>(bytesRequest, { uri: encodeURI(path), most: mostBytes } satisfies BytesParams)
  return webSheets(sheetReader, read)
}

/** A worker has no modules: the program leaves its name behind. */
function loadPictures(address: string | undefined): Pictures {
  const loaded = self as unknown as { wattproofPictures?: Pictures; importScripts(address: string): void }
  if (!loaded.wattproofPictures) {
    if (address === undefined) throw new Error('the client names no address of the pictures')
    loaded.importScripts(address)
  }
  return loaded.wattproofPictures!
}

/** A client that names no address is answered in English. */
function loadWords(language: Language, address: string | undefined): Texts | undefined {
  if (address === undefined) return undefined
  const loaded = self as unknown as { wattproofLanguage?: Texts; importScripts(address: string): void }
  loaded.importScripts(`${address}/${language}.js`)
  return loaded.wattproofLanguage
}
