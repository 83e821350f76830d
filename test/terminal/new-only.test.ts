import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { git, put, repository, scratch, wattproof } from './run.ts'

const found = (cwd: string, ...args: string[]): string[] =>
  JSON.parse(wattproof(['check', '--format', 'json', ...args], { cwd }).out).files.flatMap(
    ({ path, findings }: { path: string; findings: { rule: string }[] }) =>
      findings.map(({ rule }) => `${path} ${rule}`),
  )

test('what was found before a change stays out, however its lines move', () => {
  const cwd = repository({ 'a.panel.yaml': bad })
  const before = found(cwd)
  expect(before.length).toBeGreaterThan(0)
  put(cwd, { 'a.panel.yaml': `# two lines\n# more\n${bad}notes: x\n` })
  expect(found(cwd, '--since', 'HEAD')).toEqual(before)
  expect(found(cwd, '--since', 'HEAD', '--new')).toEqual([])
  expect(wattproof(['check', '--since', 'HEAD', '--new', '--fail-on', 'information'], { cwd }).code).toBe(0)
})

test('what a change adds is found, also in a system that depends on it', () => {
  const system = `format: 1\nname: X\nkind: boat\narrays:\n  - { id: main, panels: [{ panel: a, count: 1 }], wiring: { in_series: 1, in_parallel: 3 } }\n`
  const cwd = repository({ 'a.panel.yaml': good, 'x.system.yaml': system })
  put(cwd, { 'a.panel.yaml': good.replace(/efficiency: .*\n/, '').replace(/voc: 22\.1 V/, 'voc: 12.1 V') })
  const fresh = found(cwd, '--since', 'HEAD', '--new')
  const all = found(cwd, '--since', 'HEAD')
  expect(fresh.some((one) => one.startsWith('a.panel.yaml'))).toBe(true)
  expect(fresh.length).toBeLessThan(all.length)
  expect(all.filter((one) => one.startsWith('x.system.yaml')).length).toBeGreaterThan(0)
  expect(fresh.filter((one) => one.startsWith('x.system.yaml wiring'))).toEqual([])
})

test('the same mistake a second time is new', () => {
  const cwd = repository({ 'a.panel.yaml': bad })
  put(cwd, { 'b.panel.yaml': bad })
  expect(found(cwd, '--since', 'HEAD', '--new').every((one) => one.startsWith('b.panel.yaml'))).toBe(true)
  expect(found(cwd, '--since', 'HEAD', '--new').length).toBeGreaterThan(0)
})

test('an acceptance that is gone makes its finding new', () => {
  const [first] = JSON.parse(wattproof(['check', '--format', 'json'], { cwd: scratch({ 'a.panel.yaml': bad }) }).out)
    .files[0].findings
  const accepted = `${bad}accepted:\n  - { rule: ${first.rule}, field: ${first.field}, because: printed so }\n`
  const cwd = repository({ 'a.panel.yaml': accepted })
  expect(found(cwd).filter((one) => one.endsWith(first.rule))).toEqual([])
  put(cwd, { 'a.panel.yaml': bad })
  expect(found(cwd, '--since', 'HEAD', '--new')).toContain(`a.panel.yaml ${first.rule}`)
})

test('staged changes are compared with the last commit', () => {
  const cwd = repository({ 'a.panel.yaml': bad, 'b.panel.yaml': good })
  put(cwd, { 'a.panel.yaml': `${bad}notes: x\n`, 'b.panel.yaml': bad })
  git(cwd, 'add', '-A')
  expect(found(cwd, '--staged', '--new').map((one) => one.split(' ')[0])).toContain('b.panel.yaml')
  expect(found(cwd, '--staged', '--new').filter((one) => one.startsWith('a.panel.yaml'))).toEqual([])
})

test('new needs something to compare with', () => {
  const run = wattproof(['check', '--new'], { cwd: repository({ 'a.panel.yaml': good }) })
  expect(run.code).toBe(2)
  expect(run.err).toContain('--new needs --since or --staged')
})
