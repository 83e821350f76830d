import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join, resolve } from 'node:path'

/**
 * Where yaml-language-server is installed, here or in a folder that NODE_PATH names; undefined where it is not:
 * npm install --prefix /tmp/other yaml-language-server; NODE_PATH=/tmp/other/node_modules npm run bench
 */
export const otherServer = createRequire(resolve('package.json'))
  .resolve.paths('yaml-language-server')
  .map((folder) => join(folder, 'yaml-language-server', 'bin', 'yaml-language-server'))
  .find((path) => existsSync(path))
