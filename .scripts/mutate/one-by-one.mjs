// Tries mutants one by one in this process: the tests and sources of a file are one bundle, which starts afresh for each mutant,
// so that nothing is left of the one before. Prints nothing; what is noticed is written into a folder.
//   node one-by-one.mjs PLAN    with mutants, each with the tests to try it by: { id, key, tries: [{ file, index, ms }] }
import { createRequire } from 'node:module'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { Script } from 'node:vm'
import { build } from 'esbuild'
import { vitestShim } from './shim.mjs'

const { folder, mutants, sources, budget } = JSON.parse(readFileSync(process.argv[2], 'utf8'))
const scripts = new Map()
/** Tests that fail without a mutant here, for what this process lacks of vitest. */
const unfit = new Map()
const switches = (globalThis.__stryker__ = {})
const require = createRequire(import.meta.url)

for (const { id, key, tries } of mutants) {
  if (existsSync(`${folder}/noticed/${key}`) || existsSync(`${folder}/survived/${key}`)) continue
  writeFileSync(`${folder}/now`, JSON.stringify({ key, until: Date.now() + 120_000 }))
  const by = await noticedBy(id, tries)
  writeFileSync(by === null ? `${folder}/survived/${key}` : `${folder}/noticed/${key}`, by ?? '')
}

async function noticedBy(id, tries) {
  const start = process.cpuUsage()
  const started = new Map()
  for (const { file, index } of tries) {
    const { user, system } = process.cpuUsage(start)
    if ((user + system) / 1000 > budget) break
    if (!started.has(file)) started.set(file, await begun(file, id))
    const tests = started.get(file)
    if (tests === null) return file // it does not even load any more
    const test = tests[index]
    if (!test || !(await fails(test.run, id)) || (await isUnfit(file, index))) continue
    return `${file} > ${test.name}`
  }
  return null
}

/** The tests of a file with a mutant from the first line on; null where that throws. */
async function begun(file, id) {
  if (!scripts.has(file)) scripts.set(file, await bundled(file))
  const { module, tests } = vitestShim()
  activate(id)
  try {
    scripts.get(file).runInThisContext()((name) => (name === 'vitest' ? module : require(name)), { exports: {} }, {})
    return tests
  } catch {
    return null
  } finally {
    activate(undefined)
  }
}

async function isUnfit(file, index) {
  const key = `${file} ${index}`
  if (!unfit.has(key)) {
    const tests = await begun(file, undefined)
    unfit.set(key, !tests?.[index] || (await fails(tests[index].run, undefined)))
  }
  return unfit.get(key)
}

async function fails(run, id) {
  activate(id)
  try {
    await run()
    return false
  } catch {
    return true
  } finally {
    activate(undefined)
  }
}

/** A loop that does not end any more comes by its mutant again and again, and is stopped there. */
function activate(id) {
  Object.assign(switches, { activeMutant: id, hitCount: id === undefined ? undefined : 0, hitLimit: 3_000_000 })
}

async function bundled(file) {
  const mutated = {
    name: 'mutated',
    setup: (b) =>
      b.onLoad({ filter: /server\/src\/.*\.ts$/ }, ({ path }) => {
        const text = sources[path.slice(resolve('.').length + 1)]
        return text === undefined ? undefined : { contents: text, loader: 'ts' }
      }),
  }
  const { outputFiles } = await build({
    entryPoints: [file],
    bundle: true,
    platform: 'node',
    format: 'cjs',
    packages: 'external',
    define: { 'import.meta.url': JSON.stringify(`file://${resolve(file)}`) },
    logLevel: 'silent',
    write: false,
    plugins: [mutated],
  })
  return new Script(`(require, module, exports) => {${outputFiles[0].text}\n}`, { filename: file })
}
