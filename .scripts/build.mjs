// Bundles the programs of the package into dist/ and refuses a bundle that breaks a promise of the README.
//   node .scripts/build.mjs              all of it
//   node .scripts/build.mjs --if-stale   only when a source is younger than the last build
import { build } from 'esbuild'
import { chmodSync, existsSync, readdirSync, statSync } from 'node:fs'
import { extname, join, relative } from 'node:path'
import { broken } from './build/promises.mjs'
import { packagesIn } from './build/packages.mjs'
import { programs } from './build/programs.mjs'
import { removeOthers, replace } from './build/replace.mjs'
import { metafileSizes } from './build/sizes.mjs'

const stamp = 'dist/.built'
if (process.argv.includes('--if-stale') && !stale()) process.exit(0)

// sources alone, as git hands them to a manager of hooks, are built without a word on standard output
if (process.argv.includes('--quiet')) console.log = () => {}

const results = await Promise.allSettled(
  programs.map(({ entry, ...options }) => build({ ...options, entryPoints: [entry], write: false })),
)
const built = results.flatMap((result) => (result.status === 'fulfilled' ? [result.value] : []))
// esbuild has said why
if (built.length < programs.length) process.exit(1)
const files = new Map(
  built.flatMap(({ outputFiles }) => outputFiles).map(({ path, text }) => [relative('', path), asciiOnly(text)]),
)
replace(files)
removeOthers('dist', [...files.keys(), 'dist/packages.json', stamp])
chmodSync('dist/wattproof.js', 0o755)
const metafiles = built.map(({ metafile }) => metafile)

for (const line of metafileSizes(metafiles)) console.log(line)
for (const problem of broken(metafiles)) {
  console.error(problem)
  process.exitCode = 1
}
if (!process.exitCode) {
  replace(
    new Map([
      ['dist/packages.json', JSON.stringify(packagesIn(metafiles))],
      [stamp, ''],
    ]),
  )
}

/** esbuild leaves only regular expressions in other letters, and one alone doubles the memory of a program: 2 ms of a start. */
function asciiOnly(program) {
  return program.replace(/[^\0-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

function stale() {
  if (!existsSync(stamp)) return true
  const built = statSync(stamp).mtimeMs
  const sources = ['client/src', 'server/src', 'schemas'].flatMap((folder) =>
    readdirSync(folder, { recursive: true }).map((name) => join(folder, String(name))),
  )
  return [...sources, 'package.json', '.scripts/build.mjs']
    .filter((path) => ['.ts', '.js', '.mjs', '.json', '.css'].includes(extname(path)))
    .some((path) => statSync(path).mtimeMs > built)
}
