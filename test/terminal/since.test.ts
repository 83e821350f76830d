import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { git, put, repository, wattproof } from './run.ts'

const checked = (cwd: string, ...args: string[]): string[] =>
  JSON.parse(wattproof(['check', '--format', 'json', ...args], { cwd }).out).files.map(
    (file: { path: string }) => file.path,
  )

const panels = { 'panels/a.panel.yaml': bad, 'panels/b.panel.yaml': good, 'panels/c.panel.yaml': good }
const system = (panel: string) =>
  `format: 1\nname: X\nkind: boat\narrays:\n  - { id: main, panels: [{ panel: ${panel}, count: 1 }] }\n`

test('only what changed: in a commit, in the index, on disk, and new', () => {
  const cwd = repository({ ...panels, 'panels/d.panel.yaml': good, 'panels/e.panel.yaml': good })
  expect(checked(cwd, '--since', 'HEAD')).toEqual([])
  put(cwd, { 'panels/b.panel.yaml': `${good}notes: x\n` })
  git(cwd, 'commit', '-qam', 'second')
  put(cwd, {
    'panels/c.panel.yaml': `${good}notes: x\n`,
    'panels/d.panel.yaml': `${good}notes: x\n`,
    'panels/new.panel.yaml': good,
  })
  git(cwd, 'add', 'panels/c.panel.yaml')
  expect(checked(cwd, '--since', 'HEAD~1')).toEqual(['b', 'c', 'd', 'new'].map((id) => `panels/${id}.panel.yaml`))
  expect(checked(cwd, '--since', 'HEAD')).toEqual(['c', 'd', 'new'].map((id) => `panels/${id}.panel.yaml`))
})

test('old findings do not fail a change elsewhere', () => {
  const cwd = repository(panels)
  put(cwd, { 'panels/b.panel.yaml': `${good}notes: x\n` })
  expect(wattproof(['check'], { cwd }).code).toBe(1)
  expect(wattproof(['check', '--since', 'HEAD'], { cwd }).code).toBe(0)
})

test('changed settings concern everything below them, and nothing else', () => {
  const cwd = repository({ 'one/wattproof.yaml': 'format: 1\n', 'one/a.panel.yaml': good, 'two/b.panel.yaml': good })
  put(cwd, { 'one/wattproof.yaml': 'format: 1\ncurrency: EUR\n' })
  expect(checked(cwd, '--since', 'HEAD')).toEqual(['one/a.panel.yaml', 'one/wattproof.yaml'])
})

test('a branch is compared with where it left', () => {
  const cwd = repository(panels)
  git(cwd, 'checkout', '-q', '-b', 'work')
  put(cwd, { 'panels/b.panel.yaml': `${good}notes: x\n` })
  git(cwd, 'commit', '-qam', 'ours')
  git(cwd, 'checkout', '-q', 'main')
  put(cwd, { 'panels/c.panel.yaml': `${good}notes: x\n` })
  git(cwd, 'commit', '-qam', 'theirs')
  git(cwd, 'checkout', '-q', 'work')
  expect(checked(cwd, '--since', 'main')).toEqual(['panels/b.panel.yaml'])
})

test('it works from below the root of the repository, and with odd names', () => {
  const cwd = repository({ 'sub/ä b.panel.yaml': good, 'sub/c.panel.yaml': good, 'd.panel.yaml': good })
  put(cwd, { 'sub/ä b.panel.yaml': `${good}notes: x\n`, 'd.panel.yaml': `${good}notes: x\n` })
  expect(checked(join(cwd, 'sub'), '--since', 'HEAD')).toEqual(['ä b.panel.yaml'])
})

test.each(['nowhere', '--all', 'HEAD:x'])('revision %s that git does not know', (revision) => {
  const run = wattproof(['check', `--since=${revision}`], { cwd: repository(panels) })
  expect(run).toMatchObject({ code: 2, out: '' })
  expect(run.err).toContain(`\`${revision}\``)
})

test('a changed or removed panel concerns the systems that name it', () => {
  const cwd = repository({
    ...panels,
    'wattproof.yaml': 'format: 1\n',
    'x.system.yaml': system('b'),
    'y.system.yaml': system('c'),
  })
  put(cwd, { 'panels/b.panel.yaml': `${good}notes: x\n` })
  expect(checked(cwd, '--since', 'HEAD')).toEqual(['panels/b.panel.yaml', 'x.system.yaml'])
  rmSync(join(cwd, 'panels/c.panel.yaml'))
  expect(checked(cwd, '--since', 'HEAD')).toEqual(['panels/b.panel.yaml', 'x.system.yaml', 'y.system.yaml'])
})

test('a changed climate that the settings name concerns the systems that name none of their own', () => {
  const bay = 'format: 1\nname: Bay\nlatitude: 43.5 deg\n'
  const cwd = repository({
    'wattproof.yaml': 'format: 1\nsite: { climate: bay }\n',
    'bay.climate.yaml': bay,
    'hill.climate.yaml': bay,
    'x.system.yaml': 'format: 1\nname: X\nkind: boat\n',
    'y.system.yaml': 'format: 1\nname: Y\nkind: boat\nsite: { climate: hill }\n',
  })
  put(cwd, { 'bay.climate.yaml': bay.replace('43.5', '44') })
  expect(checked(cwd, '--since', 'HEAD')).toEqual(['bay.climate.yaml', 'x.system.yaml'])
})

test('with a folder named, changes elsewhere stay out, but what depends on a change in it comes along', () => {
  const cwd = repository({
    ...panels,
    'wattproof.yaml': 'format: 1\n',
    'x.system.yaml': system('b'),
    'other/d.panel.yaml': good,
  })
  put(cwd, { 'panels/b.panel.yaml': `${good}notes: x\n`, 'other/d.panel.yaml': `${good}notes: x\n` })
  expect(checked(cwd, 'panels', '--since', 'HEAD')).toEqual(['panels/b.panel.yaml', 'x.system.yaml'])
  expect(checked(cwd, 'panels/c.panel.yaml', '--since', 'HEAD')).toEqual([])
  put(cwd, { 'wattproof.yaml': 'format: 1\ncurrency: EUR\n' })
  expect(checked(cwd, 'other', '--since', 'HEAD')).toEqual(['other/d.panel.yaml'])
})
