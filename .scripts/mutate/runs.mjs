// The three runs of a sample of mutants: which tests reach which, all mutants in one process, and each that is left in its own.
import { spawn } from 'node:child_process'
import { existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { relative } from 'node:path'
import { Writable } from 'node:stream'
import { createVitest } from 'vitest/node'

const config = 'test/vitest.mutate.config.mts'
const sink = new Writable({ write: (_, __, done) => done() })
const timeout = (ms) => new Promise((resolve) => setTimeout(resolve, ms, null).unref())

export function createRuns(folder, mutants, sources) {
  const plan = `${folder}/plan.json`
  const notice = (id, by) => writeFileSync(`${folder}/noticed/${id}`, by)
  const isNoticed = (id) => existsSync(`${folder}/noticed/${id}`)

  return {
    /** Runs the tests on the sources as they are. @returns by file: its time, the mutants that its tests reach, and those reached while it loads */
    async reach(tests) {
      const { code } = await vitest('reach', tests)
      if (code !== 0) throw new Error('the tests fail without a mutant: see the report above')
      const reports = reportsOf('reach').map(({ file, once, tests: own }) => ({
        file,
        once: new Set(once),
        ids: new Set(own.flatMap((test) => test.ids)),
        ms: own.reduce((sum, { ms }) => sum + ms, 0),
      }))
      return reports.sort((a, b) => a.ms - b.ms)
    },

    /** Every mutant in one process a file, the fastest files first; again where a mutant spoilt its process or did not end. */
    async tryTogether(reached) {
      let left = reached.filter(({ ids }) => ids.size > 0).map(({ file }) => file)
      while (left.length > 0) {
        rmSync(`${folder}/try`, { recursive: true, force: true })
        const { stuck } = await vitest('try', left)
        if (stuck) notice(stuck, 'time')
        const done = new Set(reportsOf('try').flatMap(({ file, isSpoilt }) => (isSpoilt ? [] : [file])))
        if (!stuck && reportsOf('try').length === 0) throw new Error('the tests could not be run')
        left = left.filter((file) => !done.has(file))
      }
    },

    /** What runs while modules load: each mutant is there from the first line on, and the first test that fails ends its run. */
    async tryAlone(reached) {
      const order = reached.map(({ file }) => file)
      let server = null
      for (const id of mutants) {
        const own = reached.filter(({ once }) => once.has(id)).map(({ file }) => file)
        if (isNoticed(id) || own.length === 0) continue
        write('alone', order, id)
        server ??= await createVitest('test', { config, watch: true, bail: 1 }, {}, { stdout: sink, stderr: sink })
        const specifications = (await server.globTestSpecifications()).filter(({ moduleId }) =>
          own.includes(relative('.', moduleId)),
        )
        const ended = await Promise.race([server.runTestSpecifications(specifications), timeout(120_000)])
        const passed = ended?.testModules.every((module) => module.ok()) && ended.unhandledErrors.length === 0
        if (!passed) notice(id, 'alone')
        if (ended) continue
        await server.close()
        server = null
      }
      await server?.close()
    },
  }

  function write(phase, tests, alone) {
    writeFileSync(plan, JSON.stringify({ phase, folder, mutants, tests, sources, alone }))
    process.env.MUTATE_PLAN = plan
  }

  function vitest(phase, tests) {
    write(phase, tests)
    writeFileSync(`${folder}/now`, '{}')
    const child = spawn(process.execPath, ['node_modules/vitest/vitest.mjs', 'run', '--config', config], {
      env: { ...process.env, CI: 'true' },
      stdio: phase === 'reach' ? 'inherit' : 'ignore',
      detached: true,
    })
    let stuck = null
    const watch = setInterval(() => {
      const { id, until } = nowOf(`${folder}/now`)
      if (!id || Date.now() < until) return
      stuck = id
      process.kill(-child.pid, 'SIGKILL')
    }, 1000)
    return new Promise((resolve) =>
      child.once('exit', (code) => {
        clearInterval(watch)
        resolve({ code, stuck })
      }),
    )
  }

  function reportsOf(phase) {
    const place = `${folder}/${phase}`
    if (!existsSync(place)) return []
    return readdirSync(place).map((name) => JSON.parse(readFileSync(`${place}/${name}`, 'utf8')))
  }
}

/** The file may be half written. */
function nowOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'))
  } catch {
    return {}
  }
}
