// Tries mutants one by one in this process: all tests and sources are one bundle, which starts afresh for each mutant, so that
// nothing is left of the one before. Prints nothing; what is noticed is written into a folder.
//   node one-by-one.mjs PLAN    with mutants, each with the tests to try it by: { id, key, source, tries: [{ file, distance, tests: [{ index, ms, isNamed }] }] }
import { createRequire } from 'node:module'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { bundleOf } from './bundle.mjs'
import { vitestShim } from './shim.mjs'

const { folder, mutants, sources, look } = JSON.parse(readFileSync(process.argv[2], 'utf8'))
/** Tests that fail without a mutant here, for what this process lacks of vitest. */
const unfit = new Map()
/** Processor time [ms] that the modules of a test file take to start. */
const loading = new Map()
/** Which tests noticed mutants of a source, the last first. */
const successes = new Map()
/** Processor time [ms] of a file up to the end of each round. */
const rounds = [400, 1200, 4000, Infinity]
const switches = (globalThis.__stryker__ = {})
const require = createRequire(import.meta.url)
const files = [...new Set(mutants.flatMap(({ tries }) => tries.map(({ file }) => file)))]
const script = await bundleOf(files, sources)

for (const { id, key, source, tries } of mutants) {
  if (existsSync(`${folder}/noticed/${key}`) || existsSync(`${folder}/${look.name}/${key}`)) continue
  writeFileSync(`${folder}/now`, JSON.stringify({ key, until: Date.now() + 120_000 }))
  const before = look.after ? JSON.parse(readFileSync(`${folder}/${look.after}/${key}`, 'utf8')) : []
  const tried = new Set(before)
  const by = await noticedBy(id, source, inOrder(source, tries), tried)
  if (by === null) writeFileSync(`${folder}/${look.name}/${key}`, JSON.stringify([...tried]))
  else writeFileSync(`${folder}/noticed/${key}`, by)
}

/**
 * What noticed others of the same source comes first, then what is named after it, then a little of every file, of what is near
 * to it before the rest, then more of each: a change may show where nobody would look for it.
 */
function inOrder(source, tries) {
  const all = tries.flatMap(({ file, distance, tests }) => {
    let cost = loading.get(file) ?? 100
    return tests.map(({ index, ms, isNamed }) => {
      cost += ms
      return { file, index, isNamed, distance, round: rounds.findIndex((end) => cost <= end), cost }
    })
  })
  const isThere = new Set(all.map(({ file, index }) => `${file} ${index}`))
  const before = (successes.get(source) ?? []).filter(({ file, index }) => isThere.has(`${file} ${index}`))
  const named = all.filter(({ isNamed }) => isNamed)
  all.sort((a, b) => a.round - b.round || a.distance - b.distance || a.cost - b.cost)
  return [...before.slice(0, 6), ...named, ...all]
}

/** @param tried  the tests that are over, which grows */
async function noticedBy(id, source, tries, tried) {
  let spent = 0
  const own = fresh()
  const started = new Map()
  for (const { file, index } of tries) {
    if (spent > look.budget) return null
    if (tried.has(`${file} ${index}`)) continue
    tried.add(`${file} ${index}`)
    if (!started.has(file)) {
      const [tests, ms] = await timed(() => begun(own, file, id))
      started.set(file, tests)
      loading.set(file, ms)
      spent += ms
      if (tests === null && begun(fresh(), file, undefined) !== null) return file // it does not even load any more
    }
    const test = started.get(file)?.[index]
    if (test === undefined) continue
    const [hasFailed, ms] = await timed(() => fails(test.run, id))
    spent += ms
    if (!hasFailed || (await isUnfit(file, index))) continue
    remember(source, file, index)
    return `${file} > ${test.name}`
  }
  return null
}

function remember(source, file, index) {
  const others = (successes.get(source) ?? []).filter((one) => one.file !== file || one.index !== index)
  successes.set(source, [{ file, index }, ...others])
}

/** What an action gives, and its processor time [ms]. */
async function timed(action) {
  const start = process.cpuUsage()
  const value = await action()
  const { user, system } = process.cpuUsage(start)
  return [value, (user + system) / 1000]
}

/** All modules, of which none has run yet. */
function fresh() {
  const { module, begin } = vitestShim()
  const bundle = { exports: {} }
  script.runInThisContext()((name) => (name === 'vitest' ? module : require(name)), bundle, bundle.exports)
  return { begin, modules: bundle.exports }
}

/** The tests of a file with a mutant from the first line on; null where that throws. */
function begun({ begin, modules }, file, id) {
  const tests = begin(file)
  activate(id)
  try {
    modules[file]()
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
    const tests = begun(fresh(), file, undefined)
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
  Object.assign(switches, { activeMutant: id, hitCount: id === undefined ? undefined : 0, hitLimit: 10_000_000 })
}
