// The versions of Node that the package promises to run on, beside the one that runs the tests, from the npm registry.
//   node test/package/nodes.mjs   lays them into the cache
import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

const { env, platform, arch } = process
const cache = join(env.XDG_CACHE_HOME ?? join(homedir(), '.cache'), 'wattproof-nodes')
const versions = ['20.20.2', '22.23.3', '24.21.0']

/** Each with the path of its program, there or not yet. */
export const nodes = versions.map((version) => {
  const folder = join(cache, version)
  return { version, folder, program: join(folder, 'node_modules', `node-${platform}-${arch}`, 'bin', 'node') }
})

if (import.meta.url === pathToFileURL(process.argv[1]).href)
  for (const { version, folder, program } of nodes) {
    if (existsSync(program)) continue
    const quiet = ['--no-save', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error']
    execFileSync('npm', ['install', '--prefix', folder, ...quiet, `node-${platform}-${arch}@${version}`], {
      stdio: 'inherit',
    })
    console.log(program)
  }
