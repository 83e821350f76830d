// Lays a real VS Code workbench (its server, and the page that the server gives to a browser) into a cache folder outside
// the project, from the npm registry alone. Prints that folder. A second call finds it there and returns at once.
//   node test/workbench/install/install.mjs
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { installed, place } from './place.mjs'
import { editor, nodes, unneeded, unneededExtensions } from './pins.mjs'

if (!installed()) install()
console.log(place)

/** Everything is built beside its place and renamed last, so a half-done or a second, simultaneous call does no harm. */
function install() {
  const node = nodes[`${process.platform}-${process.arch}`]
  if (!node) throw new Error(`no workbench for ${process.platform} on ${process.arch}`)
  mkdirSync(join(place, '..'), { recursive: true })
  const scratch = mkdtempSync(join(place, '..', 'scratch-'))
  try {
    unpack(node, join(scratch, 'node'), scratch)
    unpack(editor, join(scratch, 'vscode'), scratch)
    trim(join(scratch, 'vscode'))
    fill(join(scratch, 'vscode'), join(scratch, 'node'))
    try {
      renameSync(scratch, place)
    } catch (error) {
      if (!installed()) throw error // otherwise another call was quicker
    }
  } finally {
    rmSync(scratch, { recursive: true, force: true })
  }
}

function unpack({ name, version, folder, integrity }, target, scratch) {
  say(`${name} ${version}`)
  const file = join(scratch, run('npm', ['pack', '--silent', '--ignore-scripts', `${name}@${version}`], scratch).trim())
  const sum = `sha512-${createHash('sha512').update(readFileSync(file)).digest('base64')}`
  if (sum !== integrity) throw new Error(`${name}@${version} is not the package that was pinned: ${sum}`)
  mkdirSync(target)
  run('tar', ['-xzf', file, '-C', target, `--strip-components=${folder.split('/').length}`, folder], scratch)
  rmSync(file)
}

/** Takes out what no test needs before npm sees it. */
function trim(vscode) {
  for (const name of readdirSync(join(vscode, 'extensions')).filter((name) => unneededExtensions.test(name)))
    rmSync(join(vscode, 'extensions', name), { recursive: true })
  const manifest = JSON.parse(readFileSync(join(vscode, 'package.json'), 'utf8'))
  const wanted = (key) => !unneeded.some((name) => key === name || key.startsWith(`${name}@`))
  for (const list of ['dependencies', 'overrides'])
    manifest[list] = Object.fromEntries(Object.entries(manifest[list] ?? {}).filter(([key]) => wanted(key)))
  writeFileSync(join(vscode, 'package.json'), JSON.stringify(manifest, null, 2))
}

/** The editor's own dependencies, the stand-ins, and one start that fails here if a module is missing. */
function fill(vscode, node) {
  say('dependencies of the editor')
  run('npm', ['install', '--omit=dev', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], vscode, node)
  for (const [name, main, type] of [
    ['spdlog', 'spdlog.mjs', 'module'],
    ['native-watchdog', 'native-watchdog.cjs', 'commonjs'],
  ]) {
    const folder = join(vscode, 'node_modules', '@vscode', name)
    mkdirSync(folder, { recursive: true })
    writeFileSync(
      join(folder, 'package.json'),
      JSON.stringify({ name: `@vscode/${name}`, version: '0.0.0', type, main }),
    )
    copyFileSync(join(import.meta.dirname, 'stand-ins', main), join(folder, main))
  }
  say(run(join(node, 'node'), [join(vscode, 'out', 'server-main.js'), '--version'], vscode).split('\n')[0])
}

function run(program, args, cwd, pathFirst) {
  const env = pathFirst ? { ...process.env, PATH: `${pathFirst}:${process.env.PATH}` } : process.env
  return execFileSync(program, args, {
    cwd,
    env,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
    maxBuffer: 1 << 26,
  })
}

function say(what) {
  console.error(`workbench: ${what}`)
}
