// Runs the tests of a file as usual, and each test once more for every mutant that it reaches and that no test has noticed yet.
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { TestRunner } from 'vitest'

const { phase, folder, mutants, alone } = JSON.parse(readFileSync(process.env.MUTATE_PLAN, 'utf8'))
const drawn = new Set(mutants)
/** What the switches in the sources look at. */
const switches = (globalThis.__stryker__ ??= {})
// from the first line of the first module on
if (phase === 'alone') Object.assign(switches, { activeMutant: alone, hitCount: 0, hitLimit: 20_000_000 })

/** Tests that take longer [ms] only see mutants that run alone. */
const slow = 1000

export default class extends TestRunner {
  reached = {}
  isSpoilt = false

  async runTask(test) {
    const run = TestRunner.getTestFn(test)
    if (phase === 'alone') return run()
    const hits = await this.reach(test, run)
    if (phase === 'reach') return
    const open = Object.entries(hits).filter(([id]) => drawn.has(id) && !existsSync(`${folder}/noticed/${id}`))
    if (open.length === 0 || this.reached[test.id].ms > slow) return
    // a test that cannot be run twice tells nothing of a mutant
    if (await fails(run)) return
    for (const [id, count] of open) {
      await this.tryMutant(test, run, id, count)
      if (this.isSpoilt) return
    }
  }

  /** Runs a test on the sources as they are, and counts which mutants it comes by. */
  async reach(test, run) {
    switches.mutantCoverage ??= { static: {}, perTest: {} }
    switches.currentTestId = test.id
    writeFileSync(`${folder}/now`, '{}')
    const start = performance.now()
    try {
      await run()
    } finally {
      switches.currentTestId = undefined
    }
    const hits = switches.mutantCoverage.perTest[test.id] ?? {}
    this.reached[test.id] = { ms: performance.now() - start, ids: Object.keys(hits) }
    return hits
  }

  async tryMutant(test, run, id, count) {
    const limit = 30_000 + 30 * this.reached[test.id].ms
    writeFileSync(`${folder}/now`, JSON.stringify({ id, until: Date.now() + limit }))
    const { perTest } = switches.mutantCoverage
    // a loop that does not end any more comes by its mutant again and again
    Object.assign(switches, { activeMutant: id, hitCount: 0, hitLimit: 100 * count + 1000 })
    const isNoticed = await fails(run)
    Object.assign(switches, { activeMutant: undefined, hitCount: undefined })
    perTest[test.id] = {}
    if (!isNoticed) return
    writeFileSync(`${folder}/noticed/${id}`, test.file.name)
    // what a mutant leaves in a cache would make the next test fail without any
    if (await fails(run)) this.isSpoilt = true
  }

  onAfterRunFiles(files) {
    super.onAfterRunFiles?.(files)
    if (phase === 'alone') return
    const [{ name }] = files
    const own = `${folder}/${phase}/${createHash('sha256').update(name).digest('hex').slice(0, 12)}.json`
    mkdirSync(`${folder}/${phase}`, { recursive: true })
    const once = Object.keys(switches.mutantCoverage?.static ?? {})
    writeFileSync(
      own,
      JSON.stringify({ file: name, once, tests: Object.values(this.reached), isSpoilt: this.isSpoilt }),
    )
  }
}

async function fails(run) {
  try {
    await run()
    return false
  } catch {
    return true
  }
}
