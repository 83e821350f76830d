import { chmodSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { bad, good } from '../terminal/records.ts'
import { git, put, scratch } from '../terminal/run.ts'
import { clone, run } from './clone.ts'

const missing = spawnSync('/usr/bin/pre-commit', ['--version']).status !== 0

test.skipIf(missing && !process.env.WATTPROOF_NO_SKIP)(
  "Debian's pre-commit installs the documented hook, which checks what is staged; left out without pre-commit",
  () => {
    const home = { HOME: scratch(), PRE_COMMIT_HOME: scratch() }
    const source = clone()
    const cwd = scratch({ 'a.panel.yaml': good, '.pre-commit-config.yaml': config(source) })
    git(cwd, 'init', '-q')
    const commit = (what: string) => {
      const identity = ['-c', 'user.name=A', '-c', 'user.email=a@example.com', '-c', 'commit.gpgsign=false']
      const { status, stdout, stderr } = run('git', [...identity, 'commit', '-qm', what], cwd, home)
      return { status, said: stdout + stderr }
    }
    git(cwd, 'add', '-A')
    expect(run('/usr/bin/pre-commit', ['install'], cwd, home)).toMatchObject({ status: 0 })
    const first = commit('good')
    expect(first, first.said).toMatchObject({ status: 0 })
    put(cwd, { 'a.panel.yaml': bad })
    git(cwd, 'add', '-A')
    put(cwd, { 'a.panel.yaml': good }) // put right on disk, but not staged
    const slip = commit('a slip')
    expect(slip.said).toContain('voc-below-vmp')
    expect(slip.status).toBe(1)
    const all = run('/usr/bin/pre-commit', ['run', '--all-files'], cwd, home)
    expect(all.status).toBe(1)
  },
  600_000,
)

test('npm installs the command from a clone, the way newer managers of hooks call it', () => {
  const prefix = scratch()
  const env = {
    HOME: scratch(),
    NPM_CONFIG_PREFIX: prefix,
    npm_config_prefix: prefix,
    NODE_PATH: join(prefix, 'lib/node_modules'),
  }
  const source = clone()
  const url = `git+${pathToFileURL(source).href}`
  const installed = run('npm', ['install', '-g', url], source, env)
  expect(installed, installed.stderr).toMatchObject({ status: 0 })
  const cwd = scratch({ 'a.panel.yaml': bad })
  expect(run(join(prefix, 'bin/wattproof'), ['check'], cwd, env)).toMatchObject({ status: 1 })
}, 600_000)

test('npm pack prints the name of the package and nothing else', () => {
  const source = clone()
  const { status, stdout, stderr } = run('npm', ['pack'], source, { HOME: scratch() })
  expect({ status, stdout }, stderr).toEqual({ status: 0, stdout: 'wattproof-0.1.0.tgz\n' })
}, 600_000)

test('a plain git hook, as the README has it, checks what is staged', () => {
  const [, script = ''] = /```sh\n(#!\/bin\/sh\n[^]*?)```/.exec(readFileSync('README.md', 'utf8')) ?? []
  expect(script).toContain('wattproof check --staged')
  const cwd = scratch({ 'a.panel.yaml': bad })
  git(cwd, 'init', '-q')
  const bin = scratch()
  writeFileSync(
    join(bin, 'wattproof'),
    `#!/bin/sh\nexec "${process.execPath}" "${join(process.cwd(), 'dist/wattproof.js')}" "$@"\n`,
  )
  writeFileSync(join(cwd, '.git/hooks/pre-commit'), script)
  for (const path of [join(bin, 'wattproof'), join(cwd, '.git/hooks/pre-commit')]) chmodSync(path, 0o755)
  const commit = (...args: string[]) =>
    run('git', ['-c', 'user.name=A', '-c', 'user.email=a@example.com', 'commit', '-qm', 'x', ...args], cwd, {
      PATH: `${bin}:${process.env.PATH}`,
    }).status
  git(cwd, 'add', '-A')
  put(cwd, { 'a.panel.yaml': good })
  expect(commit()).toBe(1) // the first commit
  git(cwd, 'add', '-A')
  put(cwd, { 'a.panel.yaml': bad })
  expect(commit()).toBe(0)
  expect(commit('-a')).toBe(1) // which prepares an index of its own
  put(cwd, { 'a.panel.yaml': `${good}notes: x\n`, 'b.panel.yaml': bad })
  expect(commit('a.panel.yaml')).toBe(0)
})

const config = (source: string) => `repos:
  - repo: ${pathToFileURL(source).href}
    rev: ${git(source, 'rev-parse', 'HEAD').trim()}
    hooks:
      - id: wattproof
`
