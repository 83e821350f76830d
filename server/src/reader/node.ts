// A process of its own, which can be stopped: reads one sheet after the other.
import { sheetOf } from './read-bytes.ts'

process.on('message', ({ bytes }: { bytes: Uint8Array }) => {
  void sheetOf(new Uint8Array(bytes)).then((sheet) => process.send?.(sheet))
})
process.on('disconnect', () => process.exit())
