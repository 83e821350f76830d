import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { git, put, scratch, wattproof } from './run.ts'

const system = 'format: 1\nname: X\nkind: boat\narrays:\n  - { id: main, panels: [{ panel: a, count: 1 }] }\n'

function repository(files: Readonly<Record<string, string>>): string {
  const cwd = scratch(files)
  git(cwd, 'init', '-q')
  return cwd
}
function committed(files: Readonly<Record<string, string>>): string {
  const cwd = repository(files)
  git(cwd, 'add', '-A')
  git(cwd, 'commit', '-qm', 'first')
  return cwd
}
interface File {
  path: string
  findings: { rule: string }[]
}
function checked(cwd: string, ...args: string[]) {
  const { code, out } = wattproof(['check', '--format', 'json', ...args], { cwd })
  const { files } = JSON.parse(out) as { files: File[] }
  return {
    code,
    paths: files.map(({ path }) => path),
    rules: files.flatMap((file) => file.findings.map((f) => f.rule)),
  }
}

test('what is staged is checked, not what is on disk', () => {
  const cwd = committed({ 'a.panel.yaml': good, 'b.panel.yaml': bad })
  put(cwd, { 'a.panel.yaml': bad })
  expect(checked(cwd, '--staged')).toMatchObject({ code: 0, paths: [] })
  git(cwd, 'add', '-A')
  put(cwd, { 'a.panel.yaml': good, 'new.panel.yaml': bad })
  const { code, paths, rules } = checked(cwd, '--staged')
  expect({ code, paths }).toEqual({ code: 1, paths: ['a.panel.yaml'] })
  expect(rules).toContain('voc-below-vmp')
  rmSync(join(cwd, 'a.panel.yaml'))
  expect(checked(cwd, '--staged')).toMatchObject({ code: 1, paths: ['a.panel.yaml'] })
})

test('settings and other records are read from the index too, and what depends on a staged change comes along', () => {
  const cwd = committed({ 'wattproof.yaml': 'format: 1\n', 'panels/a.panel.yaml': good, 'x.system.yaml': system })
  git(cwd, 'rm', '-q', '--cached', 'panels/a.panel.yaml')
  expect(checked(cwd, '--staged').paths).toEqual(['x.system.yaml'])
  expect(checked(cwd, '--staged').rules).toContain('unknown-record')
  git(cwd, 'add', '-A')
  put(cwd, { 'wattproof.yaml': 'format: 1\nseverities: { voc-below-vmp: off }\n', 'panels/a.panel.yaml': bad })
  git(cwd, 'add', 'panels')
  expect(checked(cwd, '--staged')).toMatchObject({ code: 1 })
  git(cwd, 'add', '-A')
  expect(checked(cwd, '--staged').rules).not.toContain('voc-below-vmp')
})

test('from below the top, in a linked work tree, and for named files even if unchanged', () => {
  const cwd = committed({ 'sub/a.panel.yaml': good, 'sub/b.panel.yaml': bad, 'c.panel.yaml': good })
  const other = join(scratch(), 'tree')
  git(cwd, 'worktree', 'add', '-q', other)
  put(other, { 'sub/a.panel.yaml': bad, 'c.panel.yaml': bad })
  git(other, 'add', '-A')
  expect(checked(join(other, 'sub'), '--staged').paths).toEqual(['a.panel.yaml'])
  expect(checked(cwd, '--staged').paths).toEqual([])
  expect(checked(cwd, '--staged', 'sub/b.panel.yaml')).toMatchObject({ code: 1, paths: ['sub/b.panel.yaml'] })
})

test.each([['--staged'], ['--since', 'HEAD']])(
  'before the first commit everything counts as changed: %s',
  (...args) => {
    const cwd = repository({ 'a.panel.yaml': bad, 'sub/b.panel.yaml': good })
    git(cwd, 'add', '-A')
    expect(checked(cwd, ...args)).toMatchObject({ code: 1, paths: ['a.panel.yaml', 'sub/b.panel.yaml'] })
  },
)

test('--staged outside of a repository, and beside --since', () => {
  const cwd = scratch({ 'a.panel.yaml': good })
  const alone = wattproof(['check', '--staged'], { cwd })
  expect(alone.code).toBe(2)
  expect(alone.err).toContain('--staged needs a git repository')
  expect(wattproof(['check', '--staged', '--since', 'HEAD'], { cwd: repository({}) }).code).toBe(2)
})

test('line ends that git changes are no change', () => {
  const cwd = committed({ 'a.panel.yaml': bad })
  put(cwd, { 'a.panel.yaml': bad.replaceAll('\n', '\r\n') })
  expect(checked(cwd, '--since', 'HEAD').paths).toEqual([])
})

test('places for a pull request are from the top of the repository, whatever the current folder', () => {
  const cwd = committed({ 'lib/panels/a.panel.yaml': bad })
  const below = join(cwd, 'lib/panels')
  const github = wattproof(['check', '--format', 'github'], { cwd: below }).out
  expect(github).toMatch(/^::error file=lib\/panels\/a\.panel\.yaml,line=/m)
  expect(github).toMatch(/^lib\/panels\/a\.panel\.yaml:3:/m)
  const [run] = JSON.parse(wattproof(['check', '--format', 'sarif'], { cwd: below }).out).runs
  expect(run.artifacts[0].location.uri).toBe('lib/panels/a.panel.yaml')
  expect(run.results[0].locations[0].physicalLocation.artifactLocation.uri).toBe('lib/panels/a.panel.yaml')
  expect(run.originalUriBaseIds['%SRCROOT%'].uri).toMatch(new RegExp(`^file://.*${cwd.split('/').at(-1)}/$`))
  expect(checked(below).paths).toEqual(['a.panel.yaml'])
})
