import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser'
import { serve } from './server.ts'

/** A web worker beside the editor in a browser; files come from the client. */
const worker = self as unknown as Worker
serve(createConnection(new BrowserMessageReader(worker), new BrowserMessageWriter(worker)), null)
