import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { git, scratch, wattproof } from './run.ts'

const checked = (cwd: string, ...args: string[]): string[] =>
  JSON.parse(wattproof(['check', '--format', 'json', ...args], { cwd }).out).files.map(
    (file: { path: string }) => file.path,
  )

const tree = {
  'a.panel.yaml': good,
  'deep/er/b.panel.yml': good,
  'deep/C.PANEL.JSON': '{}',
  'deep/readme.yaml': 'x: 1',
  '.hidden/d.panel.yaml': good,
  'node_modules/x/e.panel.yaml': good,
}

test('a walk takes records of every spelling, and no dot folders or installed packages', () => {
  expect(checked(scratch(tree))).toEqual(['a.panel.yaml', 'deep/C.PANEL.JSON', 'deep/er/b.panel.yml'])
})

test('inside a repository git says what belongs to it', () => {
  const cwd = scratch({ ...tree, '.gitignore': 'node_modules\ndrafts/\n', 'drafts/f.panel.yaml': good })
  git(cwd, 'init', '-q')
  expect(checked(cwd)).toEqual(['.hidden/d.panel.yaml', 'a.panel.yaml', 'deep/C.PANEL.JSON', 'deep/er/b.panel.yml'])
  expect(checked(cwd, 'drafts')).toEqual(['drafts/f.panel.yaml']) // named in so many words
  expect(checked(cwd, 'drafts/f.panel.yaml')).toEqual(['drafts/f.panel.yaml'])
})

test('paths are printed relative to the current folder', () => {
  const cwd = scratch(tree)
  mkdirSync(join(cwd, 'elsewhere'))
  expect(checked(join(cwd, 'elsewhere'), '../deep')).toEqual(['../deep/C.PANEL.JSON', '../deep/er/b.panel.yml'])
})

test('settings are found upward from the file, not from where one stands', () => {
  const cwd = scratch({
    'lib/wattproof.yaml': 'format: 1\nseverities: { voc-below-vmp: warning }\n',
    'lib/panels/x.panel.yaml': bad,
  })
  const severity = (from: string, path: string) =>
    JSON.parse(wattproof(['check', '--format', 'json', path], { cwd: from }).out).files[0].findings.find(
      (f: { field: string; rule: string }) => f.rule === 'voc-below-vmp',
    )?.severity
  expect(severity(cwd, 'lib/panels/x.panel.yaml')).toBe('warning')
  expect(severity(join(cwd, 'lib/panels'), 'x.panel.yaml')).toBe('warning')
})

test('standard input is read under the name that it would have', () => {
  const cwd = scratch({ 'wattproof.yaml': 'format: 1\n', 'panels/x.panel.yaml': good })
  const run = wattproof(['check', '-', '--stdin-filename', 'panels/x.panel.yaml', '--format', 'json'], {
    cwd,
    input: bad,
  })
  expect(run.code).toBe(1)
  expect(JSON.parse(run.out).files).toMatchObject([{ path: 'panels/x.panel.yaml', kind: 'panel' }])
})
