// A worker of its own in a browser, which can be stopped: reads one sheet after the other.
import { unreadable } from '../sheets/sheet.ts'
import { unpacksTooLarge } from './limits.ts'
import { sheetOf } from './read-bytes.ts'
import { unpacksTooFar } from './unpacked.ts'

const worker = self as unknown as Worker

worker.addEventListener('message', ({ data }: MessageEvent<Uint8Array>) => {
  readable(data).then(
    (sheet) => worker.postMessage(sheet),
    () => self.close(), // whoever waits runs out of patience
  )
})

/** Nobody watches the memory of a worker in a browser. */
const readable = async (bytes: Uint8Array) =>
  (await unpacksTooFar(bytes)) ? unreadable(unpacksTooLarge) : sheetOf(bytes)
