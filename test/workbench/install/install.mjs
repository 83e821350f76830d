// Lays two real VS Code workbenches into a cache folder outside the project, from the npm registry alone: one with its server,
// which gives the page to a browser, and one that is a browser's alone. A second call finds them there and returns at once.
//   node test/workbench/install/install.mjs
import { installed, place, webInstalled, webPlace } from './place.mjs'
import { layInto } from './unpack.mjs'
import { layServer } from './server.mjs'
import { layWeb } from './web.mjs'

if (!installed()) layInto(place, installed, layServer)
console.log(place)
if (!webInstalled()) layInto(webPlace, webInstalled, layWeb)
console.log(webPlace)
