// The three runs of a sample of mutants: which tests reach which, many mutants in one process, and those left each in its own.
import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { relative } from 'node:path'
import { Writable } from 'node:stream'
import { createVitest } from 'vitest/node'
import { hashOf } from './draw.mjs'

const config = 'test/vitest.mutate.config.mts'
const sink = new Writable({ write: (_, __, done) => done() })
const timeout = (ms) => new Promise((resolve) => setTimeout(resolve, ms, null).unref())

export function createRuns(folder, mutants, sources) {
  const plan = `${folder}/plan.json`
  const keyOf = Object.fromEntries(mutants.map(({ id, key }) => [id, key]))
  const notice = (id, by) => writeFileSync(`${folder}/noticed/${keyOf[id]}`, by)
  const isNoticed = (id) => existsSync(`${folder}/noticed/${keyOf[id]}`)
  const version = hashOf(JSON.stringify(sources))
  /** What a run leaves of a test file, while neither it nor the sources change. */
  const reports = (phase, file) =>
    `${folder}/${phase}/${hashOf(`${version} ${file} ${readFileSync(file, 'utf8')}`)}.json`
  const reportOf = (phase, file) => {
    const path = reports(phase, file)
    return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null
  }

  return {
    /** Runs the tests on the sources as they are. @returns by file: its tests with their times [ms] and the mutants that they reach, and those reached while it loads */
    async reach(files) {
      const open = files.filter((file) => !reportOf('reach', file))
      if (open.length > 0) await vitest('reach', open)
      return files.map((file) => {
        const report = reportOf('reach', file)
        if (!report) throw new Error(`${file} fails without a mutant`)
        return { file, tests: report.tests, once: new Set(report.once) }
      })
    },

    /**
     * Every mutant in one process a file; again where one spoilt its process or did not end.
     *
     * @param after   by tests that take longer than that [ms]
     * @param limit   and up to that [ms]
     * @param budget  that a file spends on one mutant at most [ms]
     */
    async tryTogether(reached, { after, limit, budget }) {
      const phase = `try-${limit}`
      const isOpen = ({ file, tests }) =>
        !reportOf(phase, file) &&
        tests.some(({ ms, ids }) => after < ms && ms <= limit && ids.some((id) => keyOf[id] && !isNoticed(id)))
      const timeOf = ({ tests }) =>
        tests.reduce((sum, { ms, ids }) => sum + (after < ms && ms <= limit ? ms * ids.length : 0), 0)
      const inOrder = [...reached].sort((a, b) => timeOf(a) - timeOf(b))
      for (;;) {
        const open = inOrder.filter(isOpen).map(({ file }) => file)
        if (open.length === 0) return
        const before = noticedCount()
        const { stuck } = await vitest(phase, open, { after, limit, budget })
        if (stuck) notice(stuck, 'time')
        else if (noticedCount() === before && open.every((file) => !reportOf(phase, file)))
          throw new Error(`${open[0]} could not be run`)
      }
    },

    /** What runs while modules load: each mutant is there from the first line on, and the first test that fails ends its run. */
    async tryAlone(reached) {
      const timeOf = ({ tests }) => tests.reduce((sum, { ms }) => sum + ms, 0)
      const inOrder = reached.filter((one) => timeOf(one) < 20_000).sort((a, b) => timeOf(a) - timeOf(b))
      let server = null
      for (const { id } of mutants) {
        const own = inOrder.filter(({ once }) => once.has(id)).map(({ file }) => file)
        const open = own.filter((file) => !reportOf(`alone-${keyOf[id]}`, file))
        if (isNoticed(id) || open.length === 0) continue
        write(
          'alone',
          inOrder.map(({ file }) => file),
          { alone: id },
        )
        server ??= await createVitest('test', { config, watch: true, bail: 1 }, {}, { stdout: sink, stderr: sink })
        const specifications = (await server.globTestSpecifications()).filter(({ moduleId }) =>
          open.includes(relative('.', moduleId)),
        )
        const ended = await Promise.race([server.runTestSpecifications(specifications), timeout(120_000)])
        const passed = ended?.testModules.every((module) => module.ok()) && ended.unhandledErrors.length === 0
        if (!passed) notice(id, 'alone')
        else for (const file of open) report(`alone-${keyOf[id]}`, file)
        if (ended) continue
        await server.close()
        server = null
      }
      await server?.close()
    },
  }

  function report(phase, file) {
    mkdirSync(`${folder}/${phase}`, { recursive: true })
    writeFileSync(reports(phase, file), '{}')
  }

  function noticedCount() {
    return mutants.filter(({ id }) => isNoticed(id)).length
  }

  function write(phase, tests, more) {
    mkdirSync(`${folder}/${phase}`, { recursive: true })
    const reportPaths = Object.fromEntries(tests.map((file) => [file, reports(phase, file)]))
    writeFileSync(
      plan,
      JSON.stringify({ phase, folder, keyOf, tests, sources: uncached(sources), reportPaths, ...more }),
    )
    process.env.MUTATE_PLAN = plan
  }

  function vitest(phase, tests, more) {
    write(phase, tests, more)
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
      child.once('exit', () => {
        clearInterval(watch)
        resolve({ stuck })
      }),
    )
  }
}

/** Quantities that were read are kept across calls, which would hide a mutant from a test that has run before. */
function uncached(sources) {
  const path = 'server/src/quantities/read.ts'
  const text = sources[path]?.replaceAll('known.set(key, reading)', 'key')
  if (text !== undefined && text === sources[path]) throw new Error(`${path} keeps what it has read in another way`)
  return text === undefined ? sources : { ...sources, [path]: text }
}

/** The file may be half written. */
function nowOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'))
  } catch {
    return {}
  }
}
