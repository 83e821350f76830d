import { createConnection } from 'vscode-languageserver/node'
import { nodeFiles } from './node-files.ts'
import { serve } from './server.ts'

/** `--stdio` for any editor, `--node-ipc` for a client that forks this file. */
serve(createConnection(), nodeFiles)
