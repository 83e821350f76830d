// What stands for `vitest` where tests run in one process with a mutant: the tests of a file in their order, and its `expect`.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  getState,
  setState,
} from '@vitest/expect'

const chai = createRequire(import.meta.resolve('@vitest/expect'))('chai')
chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)
export const expect = (value, message) => chai.expect(value, message)
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT])
expect.getState = () => getState(expect)
expect.setState = (state) => setState(state, expect)
setState({ assertionCalls: 0, isExpectingAssertions: false }, expect)
globalThis[GLOBAL_EXPECT] = expect

/** Holds a text against a file beside the test, as vitest does, and writes nothing. */
chai.use(({ Assertion }) => {
  Assertion.addMethod('toMatchFileSnapshot', function (path) {
    expect(this._obj).toBe(readFileSync(join(folder, path), 'utf8'))
  })
})
/** The folder of the test file that runs. */
let folder = '.'

/** @returns the module, and what puts the tests that are written from then on into a new list of a file */
export function vitestShim() {
  let tests = []
  const add = (name, run) => {
    const own = folder
    const inFolder = () => {
      folder = own
      return run()
    }
    tests.push({ name, run: inFolder })
  }
  add.each = (rows) => (name, run) => {
    for (const row of rows) add(name, () => (Array.isArray(row) ? run(...row) : run(row)))
  }
  add.skipIf = (isSkipped) => (isSkipped ? () => {} : add)
  const describe = (_, body) => body()
  describe.each = (rows) => (_, body) => rows.forEach((row) => (Array.isArray(row) ? body(...row) : body(row)))
  const begin = (file) => {
    folder = dirname(file)
    tests = []
    return tests
  }
  return { begin, module: { test: add, it: add, expect, describe } }
}
