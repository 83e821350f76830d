import * as module from 'node:module'
import { setFlagsFromString } from 'node:v8'

// Node keeps what it compiled for the next start from 22.1 on
if ('enableCompileCache' in module) (module.enableCompileCache as () => void)()
// by themselves the heaps of a large library grow to several times what is in use, which is text and notes; for others it is only time
const isCheck = process.argv.includes('check')
if (isCheck) {
  setFlagsFromString('--heap-growing-percent=25')
  setFlagsFromString('--semi-space-growth-factor=2')
}
// the name of the bundle, not of the source: see .scripts/build.mjs
require('./terminal.js')
// what is young has doubled once by now, to 2 MB: more saves little time for the memory that it takes
if (isCheck) setFlagsFromString('--semi-space-growth-factor=1')
