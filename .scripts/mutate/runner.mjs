// Runs the tests of a file as usual, and each test once more for every mutant that it reaches and that no test has noticed yet.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { TestRunner } from 'vitest'

const { phase, folder, keyOf, alone, limit, after, budget, reportPaths } = JSON.parse(
  readFileSync(process.env.MUTATE_PLAN, 'utf8'),
)
/** What the switches in the sources look at. */
const switches = (globalThis.__stryker__ ??= {})
// from the first line of the first module on
if (phase === 'alone') Object.assign(switches, { activeMutant: alone, hitCount: 0, hitLimit: 20_000_000 })

const noticed = (id) => `${folder}/noticed/${keyOf[id]}`

export default class extends TestRunner {
  reached = {}
  /** Time that a file has spent on a mutant in vain [ms]. */
  spent = {}
  isSpoilt = false
  hasFailed = false

  async runTask(test) {
    const run = TestRunner.getTestFn(test)
    if (phase === 'alone') return run()
    if (this.isSpoilt) return
    const known = phase === 'reach' ? null : this.known(test)
    // a test that is too slow for this round, has had its turn, or reaches nothing open, is left out
    if (
      known &&
      (known.ms > limit || known.ms <= after || !known.ids.some((id) => keyOf[id] && !existsSync(noticed(id))))
    )
      return
    const hits = await this.reach(test, run)
    if (phase === 'reach') return
    const open = Object.entries(hits).filter(([id]) => keyOf[id] && !existsSync(noticed(id)))
    // a test that cannot be run twice says nothing of a mutant
    if (open.length === 0 || (await fails(run))) return
    for (const [id, count] of open) {
      const { ms } = this.reached[test.id]
      this.spent[id] = (this.spent[id] ?? 0) + ms
      if (this.spent[id] > Math.max(budget, ms) && this.spent[id] !== ms) continue
      await this.tryMutant(test, run, id, count)
      if (this.isSpoilt) return
    }
  }

  /** What the first run found out about a test. */
  known(test) {
    const path = reportPaths[test.file.name].replace(/\/try-\d+\//, '/reach/')
    this.knownTests ??= JSON.parse(readFileSync(path, 'utf8')).tests
    return this.knownTests.find(({ name }) => name === nameOf(test)) ?? null
  }

  /** Runs a test on the sources as they are, and counts which mutants it comes by. */
  async reach(test, run) {
    switches.mutantCoverage ??= { static: {}, perTest: {} }
    switches.currentTestId = test.id
    writeFileSync(`${folder}/now`, '{}')
    const start = performance.now()
    try {
      await run()
    } catch (problem) {
      this.hasFailed = true
      throw problem
    } finally {
      switches.currentTestId = undefined
    }
    const hits = switches.mutantCoverage.perTest[test.id] ?? {}
    this.reached[test.id] = { name: nameOf(test), ms: performance.now() - start, ids: Object.keys(hits) }
    return hits
  }

  async tryMutant(test, run, id, count) {
    const most = 20_000 + 10 * this.reached[test.id].ms
    writeFileSync(`${folder}/now`, JSON.stringify({ id, until: Date.now() + most }))
    const { perTest } = switches.mutantCoverage
    // a loop that does not end any more comes by its mutant again and again
    Object.assign(switches, { activeMutant: id, hitCount: 0, hitLimit: 100 * count + 1000 })
    const isNoticed = await fails(run)
    Object.assign(switches, { activeMutant: undefined, hitCount: undefined })
    perTest[test.id] = {}
    if (!isNoticed) return
    writeFileSync(noticed(id), `${test.file.name} > ${nameOf(test)}`)
    // what a mutant leaves in a cache would make the next test fail without any
    if (await fails(run)) this.isSpoilt = true
  }

  onAfterRunFiles(files) {
    super.onAfterRunFiles?.(files)
    if (phase === 'alone' || this.isSpoilt || this.hasFailed) return
    const once = Object.keys(switches.mutantCoverage?.static ?? {})
    writeFileSync(reportPaths[files[0].name], JSON.stringify({ once, tests: Object.values(this.reached) }))
  }
}

/** The name of a test with those of its groups. */
function nameOf(test) {
  const names = []
  for (let one = test; one && one !== test.file; one = one.suite) names.unshift(one.name)
  return names.join(' > ')
}

async function fails(run) {
  try {
    await run()
    return false
  } catch {
    return true
  }
}
