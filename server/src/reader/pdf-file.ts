import './stubs.ts'
import { getDocument, VerbosityLevel, type PDFDocumentLoadingTask } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { WorkerMessageHandler } from 'pdfjs-dist/legacy/build/pdf.worker.mjs'

// the library then parses where it is, instead of starting a worker of its own
Object.assign(globalThis, { pdfjsWorker: { WorkerMessageHandler } })

/**
 * A PDF of anybody: scripts, forms, network, fonts of the system and code made at run time stay off.
 *
 * @param largestImage  larger ones are left out [pixels]
 */
export const openPdf = (bytes: Uint8Array, largestImage: number): PDFDocumentLoadingTask =>
  getDocument({
    data: bytes,
    isEvalSupported: false,
    enableXfa: false,
    disableFontFace: true,
    useSystemFonts: false,
    useWasm: false,
    useWorkerFetch: false,
    isOffscreenCanvasSupported: false,
    isImageDecoderSupported: false,
    maxImageSize: largestImage,
    stopAtErrors: false,
    verbosity: VerbosityLevel.ERRORS,
  })
