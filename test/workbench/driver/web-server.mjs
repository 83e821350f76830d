// Serves the workbench that lives in a browser alone, with the options of @vscode/test-web that the one argument holds as
// JSON. A process of its own, so that it can be ended.
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { webCommit } from '../install/pins.mjs'
import { webPlace } from '../install/place.mjs'

const { open } = createRequire(join(webPlace, 'server', 'package.json'))('@vscode/test-web')
const build = { quality: 'stable', commit: webCommit, testRunnerDataDir: join(webPlace, 'page') }
await open({ browserType: 'none', ...build, ...JSON.parse(process.argv[2]) })
