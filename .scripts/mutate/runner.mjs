// Runs the tests of a file as usual, and notes how long each takes and which mutants it comes by.
import { readFileSync, writeFileSync } from 'node:fs'
import { TestRunner } from 'vitest'

const { reports } = JSON.parse(readFileSync(process.env.MUTATE_PLAN, 'utf8'))
/** What the switches in the sources look at. */
const switches = (globalThis.__stryker__ ??= {})

export default class extends TestRunner {
  reached = []
  hasFailed = false

  async runTask(test) {
    switches.mutantCoverage ??= { static: {}, perTest: {} }
    switches.currentTestId = test.id
    const start = process.cpuUsage()
    try {
      await TestRunner.getTestFn(test)()
    } catch (problem) {
      this.hasFailed = true
      throw problem
    } finally {
      switches.currentTestId = undefined
    }
    const ids = Object.keys(switches.mutantCoverage.perTest[test.id] ?? {})
    const { user, system } = process.cpuUsage(start)
    this.reached.push({ name: nameOf(test), ms: (user + system) / 1000, ids })
  }

  onAfterRunFiles(files) {
    super.onAfterRunFiles?.(files)
    if (this.hasFailed) return
    const once = Object.keys(switches.mutantCoverage?.static ?? {})
    writeFileSync(reports[files[0].name], JSON.stringify({ once, tests: this.reached }))
  }
}

/** The name of a test with those of its groups. */
function nameOf(test) {
  const names = []
  for (let one = test; one && one !== test.file; one = one.suite) names.unshift(one.name)
  return names.join(' > ')
}
