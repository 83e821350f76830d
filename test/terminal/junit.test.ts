import { DOMParser } from '@xmldom/xmldom'
import { expect, test } from 'vitest'
import { bad, doubtful, good } from './records.ts'
import { scratch, wattproof } from './run.ts'

const read = (cwd: string, ...args: string[]) => {
  const { out, code } = wattproof(['check', '--format', 'junit', ...args], { cwd })
  const root = new DOMParser().parseFromString(out, 'text/xml').documentElement!
  const all = (name: string) => [...root.getElementsByTagName(name)]
  return { root, all, code, out }
}

test('a suite for each file, a failure for each finding that fails the run', () => {
  const { root, all, code } = read(scratch({ 'a <1>.panel.yaml': bad, 'b.panel.yaml': doubtful }))
  expect(code).toBe(1)
  expect(all('testsuite').map((suite) => suite.getAttribute('name'))).toEqual(['a <1>.panel.yaml', 'b.panel.yaml'])
  const failures = all('failure')
  expect(failures.map((one) => one.getAttribute('type'))).toEqual(failures.map(() => 'error'))
  expect(failures.length).toBeGreaterThan(0)
  expect(root.getAttribute('failures')).toBe(String(failures.length))
  expect(root.getAttribute('tests')).toBe(String(all('testcase').length))
  expect(failures[0]?.textContent).toMatch(/^a <1>\.panel\.yaml:3:\d+: /)
})

test('the severity that fails a run decides here too', () => {
  const cwd = scratch({ 'b.panel.yaml': doubtful })
  expect(read(cwd).all('failure')).toHaveLength(0)
  expect(read(cwd, '--fail-on', 'warning').all('failure').length).toBeGreaterThan(0)
})

test('a file in order is a case that passes, and no file is no case', () => {
  const { all, code } = read(scratch({ 'a.panel.yaml': good, 'wattproof.yaml': 'format: 1\n' }))
  expect(code).toBe(0)
  expect(all('testcase').some((one) => one.getAttribute('name') === 'in order')).toBe(true)
  expect(read(scratch()).root.getAttribute('tests')).toBe('0')
})
