// Packs the extension into wattproof.vsix, from what `npm run build` left in dist/.
//   --if-stale   only when the package is older than the build or a page that goes into it
import { createVSIX } from '@vscode/vsce'
import { existsSync, statSync } from 'node:fs'

const packagePath = 'wattproof.vsix'
const pages = ['package.json', 'dist/.built', 'README.md', 'CHANGELOG.md', 'LICENSE'].filter((path) => existsSync(path))
const time = (path) => statSync(path).mtimeMs
const fresh = existsSync(packagePath) && pages.every((path) => time(path) <= time(packagePath))

if (!(fresh && process.argv.includes('--if-stale'))) {
  // everything is in the bundles; and pictures of the README are shown from the project's own address
  await createVSIX({
    dependencies: false,
    packagePath,
    preRelease: false,
    baseContentUrl: 'https://wattproof.example/source',
    baseImagesUrl: 'https://wattproof.example/source',
  })
  console.log(`${packagePath} ${(statSync(packagePath).size / 1000).toFixed(0)} kB`)
}
