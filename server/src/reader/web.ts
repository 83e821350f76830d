// A worker of its own in a browser, which can be stopped: reads one sheet after the other.
import { sheetOf } from './read-bytes.ts'

const worker = self as unknown as Worker

worker.addEventListener('message', ({ data }: MessageEvent<Uint8Array>) => {
  sheetOf(data).then(
    (sheet) => worker.postMessage(sheet),
    () => self.close(), // whoever waits runs out of patience
  )
})
