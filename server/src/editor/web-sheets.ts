import type { Sheets } from '../reader/kept.ts'
import { mostBytes, readingSeconds, startingSeconds, tookTooLong, tooLarge } from '../reader/limits.ts'
import { unreadable, type Sheet } from '../sheets/sheet.ts'
import { inCatalogue } from '../wording/phrase.ts'

/** What a client has at an address: bytes, how many there are where they are too many, or null. */
export type BytesAt = (path: string) => Promise<Uint8Array | { readonly size: number } | null>

/**
 * Sheets in a browser: the client reads the file, a worker that can be stopped reads the sheet. What was read is kept as long as
 * the server lives. A browser has no limit of memory for a worker.
 *
 * @param address  of the program of the worker
 */
export function webSheets(address: string, bytesAt: BytesAt): Sheets {
  let reader: Worker | null = null
  let last: Promise<unknown> = Promise.resolve()
  const known = new Map<string, Promise<Sheet>>()
  return {
    isLocal: false,
    async at(path) {
      const bytes = await bytesAt(path)
      if (bytes === null) return null
      if (!(bytes instanceof Uint8Array) || bytes.length > mostBytes) return { sheet: unreadable(tooLarge), sha256: '' }
      const sha256 = await fingerprint(bytes)
      const sheet = known.get(sha256) ?? inTurn(bytes)
      known.set(sha256, sheet)
      return { sheet: await sheet, sha256 }
    },
    end: stop,
  }

  function stop() {
    reader?.terminate()
    reader = null
  }

  function inTurn(bytes: Uint8Array): Promise<Sheet> {
    const answer = last.then(() => read(bytes))
    last = answer
    return answer
  }

  function read(bytes: Uint8Array): Promise<Sheet> {
    const fresh = reader === null
    const own = (reader ??= start(address))
    return new Promise((resolve) => {
      const finish = (sheet: Sheet) => {
        clearTimeout(timer)
        own.onmessage = own.onerror = null
        resolve(sheet)
      }
      const fail = (problem: string) => {
        stop()
        finish(unreadable(problem))
      }
      const timer = setTimeout(() => fail(tookTooLong), 1000 * (readingSeconds + (fresh ? startingSeconds : 0)))
      // the PDF library greets whoever starts a worker with it
      own.onmessage = ({ data }: MessageEvent<Sheet | object>) => 'models' in data && finish(data)
      own.onerror = () => fail(inCatalogue`the reading worker did not start`)
      own.postMessage(bytes)
    })
  }
}

/** The program may lie at another origin than this worker, which may then import it but not start it. */
function start(address: string): Worker {
  const script = URL.createObjectURL(new Blob([`importScripts(${JSON.stringify(address)})`]))
  return new Worker(script, { name: 'sheet-reader' })
}

async function fingerprint(bytes: Uint8Array): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>))
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
