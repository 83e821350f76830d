import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import { recordOfPath } from '../../server/src/records/kinds.ts'
import { bad, good } from './records.ts'
import { git, put, scratch, wattproof } from './run.ts'

const [hook] = parse(readFileSync('.pre-commit-hooks.yaml', 'utf8'))

test.each([
  'a.panel.yaml',
  'x/b.system.yml',
  'c.climate.json',
  'wattproof.yaml',
  'lib/wattproof.yml',
  'a.yaml',
  'panel.yaml',
  'xwattproof.yaml',
  '.panel.yaml',
  'x/._a.panel.yaml',
  'x/.a.panel.yaml',
  'a.panel.yaml.bak',
])('the hook takes %s exactly where the command does', (path) =>
  expect(new RegExp(hook.files).test(path)).toBe(recordOfPath(path) !== null),
)

test('called as a hook calls it: the staged files as arguments, with the environment of a commit', () => {
  const cwd = scratch({ 'wattproof.yaml': 'format: 1\n', 'panels/old.panel.yaml': bad, 'panels/a.panel.yaml': good })
  git(cwd, 'init', '-q')
  git(cwd, 'add', '-A')
  git(cwd, 'commit', '-q', '-m', 'first')
  put(cwd, {
    'panels/a.panel.yaml': `${good}notes: x\n`,
    'panels/b.panel.yaml': good,
    'panels/untouched.panel.yaml': bad,
  })
  git(cwd, 'add', 'panels/a.panel.yaml', 'panels/b.panel.yaml')
  const staged = git(cwd, 'diff', '--cached', '--name-only', '-z')
    .split('\0')
    .filter((path) => new RegExp(hook.files).test(path))
  expect(staged).toEqual(['panels/a.panel.yaml', 'panels/b.panel.yaml'])
  const [, ...args] = hook.entry.split(' ')
  const env = { GIT_DIR: '.git', GIT_INDEX_FILE: '.git/index' }
  expect(wattproof([...args, ...staged], { cwd, env })).toMatchObject({ code: 0, err: '' })
  put(cwd, { 'panels/b.panel.yaml': bad })
  git(cwd, 'add', '-A')
  put(cwd, { 'panels/b.panel.yaml': good }) // right on disk, but the slip is what is staged
  expect(wattproof([...args, ...staged], { cwd, env }).code).toBe(1)
})

test('the records that name a staged one are checked with it', () => {
  const system = 'format: 1\nname: X\nkind: boat\narrays:\n  - { id: main, panels: [{ panel: a, count: 1 }] }\n'
  const cwd = scratch({ 'wattproof.yaml': 'format: 1\n', 'panels/a.panel.yaml': good, 'systems/x.system.yaml': system })
  const { files } = JSON.parse(wattproof(['check', '--format', 'json', 'panels/a.panel.yaml'], { cwd }).out)
  expect(files.map((file: { path: string }) => file.path)).toEqual([
    join('panels', 'a.panel.yaml'),
    join('systems', 'x.system.yaml'),
  ])
})
