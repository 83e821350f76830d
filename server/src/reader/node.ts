// A process of its own, which can be stopped: reads one sheet after the other.
import { sheetOf } from './read-bytes.ts'

process.on('message', ({ bytes }: { bytes: Uint8Array }) => {
  sheetOf(new Uint8Array(bytes)).then(
    (sheet) => process.send?.(sheet),
    () => process.exit(1), // whoever waits takes the end of the process for a sheet that cannot be read
  )
})
process.on('disconnect', () => process.exit())
