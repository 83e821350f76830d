// The workbench with a server: `node/node` runs `vscode/out/server-main.js`.
import { copyFileSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { editor, nodes, unneeded, unneededExtensions } from './pins.mjs'
import { installDependencies, run, say, unpack } from './unpack.mjs'

export function layServer(folder) {
  const node = nodes[`${process.platform}-${process.arch}`]
  if (!node) throw new Error(`no workbench for ${process.platform} on ${process.arch}`)
  unpack(node, join(folder, 'node'), folder)
  unpack(editor, join(folder, 'vscode'), folder)
  trim(join(folder, 'vscode'))
  fill(join(folder, 'vscode'), join(folder, 'node'))
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
  installDependencies(vscode, node)
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
