import { existsSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { editor, layout, nodes, pageServer, web, webLayout } from './pins.mjs'

const { env, platform, arch } = process
const cache =
  env.WATTPROOF_WORKBENCH_CACHE ?? join(env.XDG_CACHE_HOME ?? join(homedir(), '.cache'), 'wattproof-workbench')

/** The folder of the workbench with a server, there or not yet; one for every set of pinned versions. */
export const place = join(cache, `${editor.version}-${nodes['linux-x64'].version}-${platform}-${arch}-${layout}`)

/** The folder of the workbench that lives in a browser alone. */
export const webPlace = join(cache, `web-${web.version}-${pageServer.version}-${webLayout}`)

/** The whole folder is renamed into place, so it is complete where it exists. */
export const installed = () => existsSync(place)
export const webInstalled = () => existsSync(webPlace)
