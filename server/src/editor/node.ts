import { createConnection } from 'vscode-languageserver/node'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { createSheets } from '../reader/kept.ts'
import type { Texts } from '../wording/bundle.ts'
import type { Pictures } from './pictures.ts'
import { inTurn } from './in-turn.ts'
import { nodeFiles } from './node-files.ts'
import { serve } from './server.ts'

/** What the protocol's library understands; without one of them it throws. */
const transport = /^--(stdio|node-ipc|(socket|pipe)(=|$))/

/** `--stdio` for any editor, `--node-ipc` for a client that forks this file. */
if (process.argv.some((argument) => transport.test(argument))) {
  // by itself the heap grows to several times what is in use, and what is new in it to 32 MB
  setFlagsFromString('--heap-growing-percent=15')
  setFlagsFromString('--semi-space-growth-factor=1')
  const sheets = createSheets(join(__dirname, 'sheet-reader.js'), { cache: true, env: process.env })
  serve(
    createConnection({ messageStrategy: inTurn() }),
    nodeFiles,
    () => sheets,
    `${pathToFileURL(join(__dirname, '..', 'schemas', 'rules.md')).href}#{rule}`,
    () => require(join(__dirname, 'pictures.js')) as Pictures,
    (language) => require(join(__dirname, 'languages', `${language}.js`)) as Texts,
  )
} else {
  process.stderr.write('wattproof: this is the language server, which an editor starts with --stdio.\n')
  process.exitCode = 2
}
