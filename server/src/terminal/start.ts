import * as module from 'node:module'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Script } from 'node:vm'

// the names of bundles, not of sources: see .scripts/build.mjs
const program = join(__dirname, 'terminal.js')
const compiled = join(__dirname, 'terminal.compiled')

// Node keeps compiled code itself from 22.1 on: 8 to 10 ms of each start less
if ('enableCompileCache' in module) (module.enableCompileCache as () => void)()
if ('enableCompileCache' in module || !existsSync(compiled)) require('./terminal.js')
else {
  // what the build compiled; V8 compiles anew where it was another V8
  const cachedData = readFileSync(compiled)
  const script = new Script(module.wrap(readFileSync(program, 'utf8')), { filename: program, cachedData })
  script.runInThisContext()({}, require, {}, program, __dirname)
}
