// Packs the extension into wattproof.vsix, from what `npm run build` left in dist/.
//   --if-stale   only when the package is older than the build or a page that goes into it
import { createVSIX } from '@vscode/vsce'
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { withKeys } from './package/manifest-words.mjs'

const wordFiles = { de: 'client/l10n/manifest.de.json', es: 'client/l10n/manifest.es.json' }
const languages = Object.fromEntries(
  Object.entries(wordFiles).map(([language, path]) => [language, JSON.parse(readFileSync(path, 'utf8'))]),
)
const packagePath = resolve('wattproof.vsix')
const staged = '.output/extension'
const contents = [
  'README.md',
  'CHANGELOG.md',
  'LICENSE',
  'THIRD-PARTY-NOTICES',
  'client/l10n/bundle.l10n.de.json',
  'client/l10n/bundle.l10n.es.json',
  'client/media/icon.png',
  'client/media/walkthrough',
  'dist',
  'schemas',
]
const time = (path) => statSync(path).mtimeMs
const fresh =
  existsSync(packagePath) &&
  ['package.json', 'dist/.built', ...Object.values(wordFiles), ...contents].every(
    (path) => time(path) <= time(packagePath),
  )

if (!(fresh && process.argv.includes('--if-stale'))) {
  stage()
  await createVSIX({
    cwd: staged,
    packagePath,
    dependencies: false, // all of it is in the bundles
  })
  console.log(`wattproof.vsix ${(statSync(packagePath).size / 1000).toFixed(0)} kB`)
}

/** The npm package without the command line, which an editor has no use for, and without what its page cannot show. */
function stage() {
  const { scripts: _, devDependencies: __, bin, files, ...manifest } = JSON.parse(readFileSync('package.json', 'utf8'))
  rmSync(staged, { recursive: true, force: true })
  mkdirSync(staged, { recursive: true })
  for (const path of contents) cpSync(path, `${staged}/${path}`, { recursive: true })
  for (const program of [...Object.values(bin), 'dist/terminal.js']) rmSync(`${staged}/${program}`)
  const shown = files.filter((path) => !/^client\/media\/(?!icon|walkthrough)/.test(path))
  const { manifest: keyed, files: words } = withKeys(manifest, languages)
  const listed = [...shown, ...Object.keys(words)]
  writeFileSync(`${staged}/package.json`, JSON.stringify({ ...keyed, files: listed }, null, 2))
  for (const [name, own] of Object.entries(words)) writeFileSync(`${staged}/${name}`, JSON.stringify(own, null, 2))
  for (const page of ['README.md', 'CHANGELOG.md'])
    writeFileSync(`${staged}/${page}`, asListed(readFileSync(page, 'utf8')))
}

/** An editor shows these pages out of their place: a picture or a page beside them would be a broken one. */
function asListed(page) {
  return page.replace(/^ *!\[.*\]\((?!https:).*\)\n\n/gm, '').replace(/\[([^\]]+)\]\((?!https:|#)[^)]+\)/g, '$1')
}
