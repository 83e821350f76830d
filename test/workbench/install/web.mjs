// The workbench that lives in a browser alone: `page` is what @vscode/test-web serves, `server` holds test-web itself.
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pageServer, web, webCommit } from './pins.mjs'
import { installDependencies, say, unpack } from './unpack.mjs'

export function layWeb(folder) {
  // the name that test-web looks for; it deletes the folder and wants to download another when `version` is missing
  const build = join(folder, 'page', `vscode-web-stable-${webCommit}`)
  mkdirSync(join(folder, 'page'))
  unpack(web, build, folder, ['*.map'])
  writeFileSync(join(build, 'version'), web.version)
  say(`${pageServer.name} ${pageServer.version}`)
  mkdirSync(join(folder, 'server'))
  const dependencies = { [pageServer.name]: pageServer.version }
  writeFileSync(join(folder, 'server', 'package.json'), JSON.stringify({ private: true, dependencies }))
  installDependencies(join(folder, 'server'))
}
