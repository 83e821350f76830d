import * as module from 'node:module'
import { setFlagsFromString } from 'node:v8'

// Node keeps what it compiled for the next start from 22.1 on
if ('enableCompileCache' in module) (module.enableCompileCache as () => void)()
// compiling takes Node 20 up to a third of a run, much of it for what hardly runs again; later versions have no such flag
if (process.versions.node.startsWith('20.')) setFlagsFromString('--interrupt-budget=400000')
// by themselves the heaps of a library grow to several times what is in use, which is text and notes; see also `saveMemory`
if (process.argv.includes('check')) {
  setFlagsFromString('--heap-growing-percent=25')
  setFlagsFromString('--semi-space-growth-factor=2')
}
// the name of the bundle, not of the source: see .scripts/build.mjs
require('./terminal.js')
