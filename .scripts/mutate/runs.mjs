// The two runs of a sample of mutants: which tests reach which, by vitest, and each mutant with the tests that reach it.
import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { hashOf } from './draw.mjs'

/**
 * Runs the tests on the sources as they are; what is known of a test file is kept while neither it nor the sources change.
 *
 * @returns by file: its tests with their times [ms] and the mutants that they reach, and those reached while it loads
 */
export async function reach(folder, files, sources) {
  const version = hashOf(JSON.stringify(sources))
  const pathOf = (file) => `${folder}/reach/${hashOf(`${version} ${file} ${readFileSync(file, 'utf8')}`)}.json`
  const reports = Object.fromEntries(files.map((file) => [file, pathOf(file)]))
  const tests = files.filter((file) => !existsSync(reports[file]))
  mkdirSync(`${folder}/reach`, { recursive: true })
  writeFileSync(`${folder}/plan.json`, JSON.stringify({ tests, sources, reports }))
  process.env.MUTATE_PLAN = `${folder}/plan.json`
  const args = ['node_modules/vitest/vitest.mjs', 'run', '--config', 'test/vitest.mutate.config.mts']
  if (tests.length > 0) await endOf(spawn(process.execPath, args, { stdio: 'inherit' }))
  return files.map((file) => {
    if (!existsSync(reports[file])) throw new Error(`${file} fails without a mutant`)
    return { file, ...JSON.parse(readFileSync(reports[file], 'utf8')) }
  })
}

/**
 * Processor time [ms] for a mutant. Tests that notice it mostly do so in the first seconds; what they leave is looked at once
 * more, and longer, when every mutant had its turn.
 */
const looks = [
  { name: 'survived', budget: 4000 },
  { name: 'survived-longer', after: 'survived', budget: 15_000 },
]

export async function tryThem(folder, mutants, sources) {
  const list = mutants
    .filter(({ tries }) => tries.length > 0)
    .map(({ id, key, file, tries }) => ({ id, key, source: file, tries }))
  for (const look of looks) {
    const left = look.after ? list.filter(({ key }) => existsSync(`${folder}/${look.after}/${key}`)) : list
    await tryOneByOne(folder, { folder, mutants: left, sources, look })
  }
}

/**
 * Tries every mutant in a process of its own memory. One that does not end counts as noticed, so does one that ends the process
 * once more when it is the first there; the next process goes on.
 */
async function tryOneByOne(folder, content) {
  const plan = `${folder}/tries.json`
  writeFileSync(plan, JSON.stringify(content))
  let ended = null
  for (;;) {
    writeFileSync(`${folder}/now`, '{}')
    const child = spawn(process.execPath, ['.scripts/mutate/one-by-one.mjs', plan], { stdio: 'inherit' })
    let stuck = null
    const watch = setInterval(() => {
      const { key, until } = nowOf(`${folder}/now`)
      if (!key || Date.now() < until) return
      stuck = key
      child.kill('SIGKILL')
    }, 1000)
    const code = await endOf(child)
    clearInterval(watch)
    if (code === 0) return
    const { key } = nowOf(`${folder}/now`)
    if (!key) throw new Error('the mutants could not be tried')
    if (stuck !== null || ended === key) writeFileSync(`${folder}/noticed/${key}`, stuck === null ? 'memory' : 'time')
    ended = key
  }
}

const endOf = (child) => new Promise((resolve) => child.once('exit', resolve))

/** The file may be half written. */
function nowOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'))
  } catch {
    return {}
  }
}
