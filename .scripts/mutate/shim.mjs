// What stands for `vitest` where tests run in one process with a mutant: the tests of a file in their order, and its `expect`.
import { createRequire } from 'node:module'
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

/** @returns the module for one file, and the list that its tests are put into */
export function vitestShim() {
  const tests = []
  const add = (name, run) => tests.push({ name, run })
  add.each = (rows) => (name, run) => {
    for (const row of rows) tests.push({ name, run: () => (Array.isArray(row) ? run(...row) : run(row)) })
  }
  add.skipIf = (isSkipped) => (isSkipped ? () => {} : add)
  const describe = (_, body) => body()
  describe.each = (rows) => (_, body) => rows.forEach((row) => (Array.isArray(row) ? body(...row) : body(row)))
  return { tests, module: { test: add, it: add, expect, describe } }
}
