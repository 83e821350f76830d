import * as module from 'node:module'

// Node keeps what it compiled for the next start from 22.1 on
if ('enableCompileCache' in module) (module.enableCompileCache as () => void)()
// the name of the bundle, not of the source: see .scripts/build.mjs
require('./terminal.js')
