// npm runs this before it packs or installs the sources: makes dist/ where the sources came without it, as they do from git.
// Standard output is left alone: some managers of hooks take what `npm pack` prints there for the name of the package.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'

if (!existsSync('node_modules/esbuild')) {
  // a plain npm of its own: what the outer one was told (-g, a prefix, a script to run) is not meant for this folder
  run('npm', ['ci', '--global=false', '--ignore-scripts', '--no-audit', '--no-fund'])
}
run(process.execPath, ['.scripts/build.mjs', '--if-stale', '--quiet'])

function run(program, args) {
  const { status, error } = spawnSync(program, args, {
    stdio: ['ignore', process.stderr, process.stderr],
    shell: process.platform === 'win32' && program === 'npm',
  })
  if (status !== 0) throw error ?? new Error(`${program} ${args[0]} ended with ${status}`)
}
