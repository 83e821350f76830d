import { chmodSync, existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { spawnSync } from 'node:child_process'
import { delimiter, join } from 'node:path'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { git, put, repository, scratch, wattproof } from './run.ts'

/** A program that leaves a mark when it is run. */
function trap(folder: string): { program: string; wasRun: () => boolean } {
  const program = join(folder, 'trap.sh')
  writeFileSync(program, `#!/bin/sh\ntouch "${folder}/was-run"\ncat 2>/dev/null\n`)
  chmodSync(program, 0o755)
  return { program, wasRun: () => existsSync(join(folder, 'was-run')) }
}

test('a folder that carries the parts of a bare repository runs nothing', () => {
  const { program, wasRun } = trap(scratch())
  const cwd = repository({ README: 'x' })
  put(cwd, {
    'lib/HEAD': 'ref: refs/heads/main\n',
    'lib/config': `[core]\n\trepositoryformatversion = 0\n\tbare = false\n\tworktree = ..\n\tfsmonitor = "${program}"\n`,
    'lib/objects/x': '',
    'lib/refs/x': '',
    'lib/a.panel.yaml': bad,
  })
  for (const args of [['lib/a.panel.yaml'], ['lib'], [], ['--since', 'HEAD'], ['--staged']]) {
    const run = wattproof(['check', ...args], { cwd })
    expect({ args, ran: wasRun(), code: run.code }).toEqual({ args, ran: false, code: args[0] === '--staged' ? 0 : 1 })
  }
  expect(wattproof(['check', 'a.panel.yaml'], { cwd: join(cwd, 'lib') }).code).toBe(1)
  expect(wasRun()).toBe(false)
})

test.each([
  ['core.fsmonitor', (p: string) => [['core.fsmonitor', p]]],
  [
    'a clean filter',
    (p: string) => [
      ['filter.x.clean', p],
      ['filter.x.required', 'true'],
    ],
  ],
  ['a running filter', (p: string) => [['filter.x.process', p]]],
  [
    'an external diff',
    (p: string) => [
      ['diff.external', p],
      ['diff.x.command', p],
      ['diff.x.textconv', p],
    ],
  ],
  ['hooks', (p: string) => [['core.hooksPath', join(p, '..')]]],
])('%s of the repository is not run', (_, settings) => {
  const { program, wasRun } = trap(scratch())
  const cwd = repository({ 'a.panel.yaml': good, '.gitattributes': '*.yaml filter=x diff=x\n' })
  put(cwd, { 'a.panel.yaml': bad, 'b.panel.yaml': good })
  for (const [name, value] of settings(program)) git(cwd, 'config', name as string, value as string)
  expect(wattproof(['check'], { cwd }).code).toBe(1)
  expect(wattproof(['check', '--since', 'HEAD'], { cwd }).code).toBe(1)
  expect(wattproof(['check', '--staged'], { cwd }).code).toBe(0)
  expect(wasRun()).toBe(false)
})

test('contents that a repository lacks are not fetched', () => {
  const { program, wasRun } = trap(scratch())
  const cwd = repository({ 'a.panel.yaml': good })
  put(cwd, { 'a.panel.yaml': bad })
  git(cwd, 'add', '-A')
  const [, blob = ''] = git(cwd, 'ls-files', '-s').split(/\s+/)
  writeFileSync(
    join(cwd, '.git/config'),
    `[core]
	repositoryformatversion = 1
[extensions]
	partialClone = origin
[remote "origin"]
	url = ext::${program}
	promisor = true
	uploadpack = ${program}
[protocol "ext"]
	allow = always
`,
  )
  const object = join(cwd, '.git/objects', blob.slice(0, 2), blob.slice(2))
  chmodSync(object, 0o644)
  writeFileSync(object, '')
  git(cwd, 'rev-parse', 'HEAD')
  const { rmSync } = { rmSync: (path: string) => writeFileSync(path, '') }
  rmSync(object)
  expect(wattproof(['check', '--staged'], { cwd }).code).toBe(2)
  expect(wasRun()).toBe(false)
})

test('a program named git in the checked or the current folder is not started', () => {
  const cwd = repository({ 'a.panel.yaml': good })
  const { program, wasRun } = trap(cwd)
  writeFileSync(join(cwd, 'git'), readFileSync(program))
  chmodSync(join(cwd, 'git'), 0o755)
  mkdirSync(join(cwd, 'bin'))
  symlinkSync('../git', join(cwd, 'bin/git'))
  for (const path of ['.', '', cwd, 'bin', './bin']) {
    const env = { PATH: [path, process.env.PATH].join(delimiter) }
    expect(wattproof(['check'], { cwd, env }).code).toBe(0)
    expect({ path, ran: wasRun() }).toEqual({ path, ran: false })
  }
})

test.runIf(process.platform !== 'win32')(
  'of datasheets, only regular files inside the library are read',
  () => {
    const sheet = readFileSync('samples/library/sheets/stork-110.pdf')
    const outside = scratch()
    writeFileSync(join(outside, 'secret.pdf'), sheet)
    const cwd = scratch({ 'lib/wattproof.yaml': 'format: 1\n' })
    writeFileSync(join(cwd, 'secret.pdf'), sheet)
    writeFileSync(join(cwd, 'lib/own.pdf'), sheet)
    spawnSync('mkfifo', [join(cwd, 'lib/pipe.pdf')])
    symlinkSync('/dev/zero', join(cwd, 'lib/zero.pdf'))
    symlinkSync(join(outside, 'secret.pdf'), join(cwd, 'lib/link.pdf'))
    symlinkSync(outside, join(cwd, 'lib/folder'))
    const read = (source: string) => {
      put(cwd, { 'lib/a.panel.yaml': `${good}datasheet: { source: ${source} }\n` })
      return wattproof(['sheet', 'lib/a.panel.yaml', '--no-cache'], { cwd })
    }
    expect(read('own.pdf').code).toBe(0)
    const others = ['pipe', 'zero', 'link', 'folder/secret', '../secret', 'x/../../secret', join(outside, 'secret')]
    for (const source of [...others, '../../../etc/passwd', 'file:////host/share'].map((name) => `${name}.pdf`))
      expect({ source, ...read(source), err: '' }).toMatchObject({ source, code: 2, out: '', signal: null })
  },
  120_000,
)

test("git's variables do not lead it to another repository", () => {
  const cwd = repository({ 'a.panel.yaml': good })
  const { program, wasRun } = trap(scratch())
  const other = repository({ 'b.panel.yaml': bad })
  git(other, 'config', 'core.fsmonitor', program)
  const env = {
    GIT_DIR: join(other, '.git'),
    GIT_COMMON_DIR: join(other, '.git'),
    GIT_WORK_TREE: other,
    GIT_CONFIG_COUNT: '1',
    GIT_CONFIG_KEY_0: 'core.fsmonitor',
    GIT_CONFIG_VALUE_0: program,
  }
  const { files } = JSON.parse(wattproof(['check', '--format', 'json'], { cwd, env }).out) as {
    files: { path: string }[]
  }
  expect(files.map(({ path }) => path)).toEqual(['a.panel.yaml'])
  expect(wasRun()).toBe(false)
})

test.runIf(process.getuid?.() === 0)(
  'a repository of another user: said in words, and its folder is walked',
  async () => {
    const { chownSync, readdirSync } = await import('node:fs')
    const cwd = repository({ 'a.panel.yaml': bad })
    for (const path of ['', ...readdirSync(cwd, { recursive: true, encoding: 'utf8' })])
      chownSync(join(cwd, path), 12345, 12345)
    const run = wattproof(['check'], { cwd, env: { HOME: scratch() } })
    expect(run.code).toBe(1)
    expect(run.err).toContain('belongs to another user (dubious ownership)')
    expect(wattproof(['check', '--since', 'HEAD'], { cwd, env: { HOME: scratch() } })).toMatchObject({ code: 2 })
  },
)
