// npm runs this before it packs or installs the sources: makes dist/ where the sources came without it, as they do from git.
// Standard output is left alone: some managers of hooks take what `npm pack` prints there for the name of the package.
import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, lstatSync, realpathSync, rmSync } from 'node:fs'
import { join, sep } from 'node:path'

if (!existsSync('node_modules/esbuild')) {
  // a plain npm of its own: what was set for the outer one (-g, a prefix, a script to run) is not meant for this folder
  run('npm', ['ci', '--global=false', '--ignore-scripts', '--no-audit', '--no-fund'])
}
run(process.execPath, ['.scripts/build.mjs', '--if-stale', '--quiet'])
unlinkClone()

/**
 * `npm install -g git+...` prepares its passing clone by an npm that inherits -g, and so links that clone as the installed
 * package; what is packed would then be written through the link and removed with the clone. So the link becomes a folder.
 */
function unlinkClone() {
  const { npm_config_global: isGlobal, npm_config_prefix: prefix } = process.env
  const clone = realpathSync('.')
  if (isGlobal !== 'true' || !prefix || !clone.includes(`${sep}_cacache${sep}tmp${sep}`)) return
  for (const folder of [join(prefix, 'lib', 'node_modules'), join(prefix, 'node_modules')]) {
    const link = join(folder, 'wattproof')
    if (lstatSync(link, { throwIfNoEntry: false })?.isSymbolicLink() && realpathSync(link) === clone) {
      rmSync(link)
      for (const path of ['package.json', 'dist']) cpSync(path, join(link, path), { recursive: true })
    }
  }
}

function run(program, args) {
  const { status, error } = spawnSync(program, args, {
    stdio: ['ignore', process.stderr, process.stderr],
    shell: process.platform === 'win32' && program === 'npm',
  })
  if (status !== 0) throw error ?? new Error(`${program} ${args[0]} ended with ${status}`)
}
