// Runs in the view beside the editor, which loads it with the first sheet: draws pages as they are printed.
import { unpacksTooLarge } from './limits.ts'
import { openPdf } from './pdf-file.ts'
import { unpacksTooFar } from './unpacked.ts'

/** A sheet that is open in the view. */
export interface OpenSheet {
  readonly pages: number
  /** Size of a page as it is shown [points]. */
  sizeOf(page: number): Promise<{ readonly width: number; readonly height: number }>
  /** Draws a page, from 1, as wide as the canvas is to be [pixels]. */
  draw(page: number, canvas: HTMLCanvasElement, width: number): Promise<void>
  close(): Promise<void>
}

/** A photograph on a sheet has some millions of pixels. */
const largestImage = 16e6
/** Of a canvas: more is no sharper on any screen. */
const widest = 4096

/** @throws where the library cannot open the file */
export async function openSheet(bytes: Uint8Array): Promise<OpenSheet> {
  if (await unpacksTooFar(bytes)) throw new Error(unpacksTooLarge)
  const task = openPdf(bytes, largestImage)
  const document = await task.promise
  let drawing: { cancel(): void; readonly promise: Promise<void> } | undefined
  return {
    pages: document.numPages,
    async sizeOf(page) {
      const { width, height } = (await document.getPage(page)).getViewport({ scale: 1 })
      return { width, height }
    },
    async draw(number, canvas, width) {
      drawing?.cancel()
      await drawing?.promise.catch(() => null)
      const page = await document.getPage(number)
      const viewport = page.getViewport({ scale: Math.min(width, widest) / page.getViewport({ scale: 1 }).width })
      canvas.width = Math.round(viewport.width)
      canvas.height = Math.round(viewport.height)
      drawing = page.render({ canvas, viewport, background: '#ffffff', annotationMode: 0 })
      await drawing.promise
    },
    close: () => task.destroy(),
  }
}
