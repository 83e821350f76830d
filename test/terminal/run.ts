import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { onTestFinished } from 'vitest'

export const program = resolve('dist/wattproof.js')

/** The real command line, as a process without a terminal. */
export function wattproof(
  args: readonly string[],
  { cwd = '.', input = '', env = {} }: { cwd?: string; input?: string; env?: Record<string, string> } = {},
) {
  const { FORCE_COLOR: _, NO_COLOR: __, GITHUB_STEP_SUMMARY: ___, WATTPROOF_TEST_CACHE: cache, ...plain } = process.env
  const run = spawnSync(process.execPath, [program, ...args], {
    cwd,
    input,
    env: { ...plain, ...(cache && { XDG_CACHE_HOME: cache }), ...env },
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  })
  return { code: run.status, out: run.stdout, err: run.stderr, signal: run.signal }
}

/** A folder of its own outside of any repository, removed behind the test. */
export function scratch(files: Readonly<Record<string, string>> = {}): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'wattproof-')))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }), 120_000)
  put(folder, files)
  return folder
}

export function put(folder: string, files: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), text)
  }
}

/** git as in a fresh checkout of anybody: no settings of this machine. */
export function git(folder: string, ...args: string[]): string {
  const identity = [
    '-c',
    'user.name=A',
    '-c',
    'user.email=a@example.com',
    '-c',
    'init.defaultBranch=main',
    '-c',
    'commit.gpgsign=false',
  ]
  const run = spawnSync('git', ['-C', folder, ...identity, ...args], {
    encoding: 'utf8',
    env: { ...process.env, GIT_CONFIG_GLOBAL: '/dev/null', GIT_CONFIG_SYSTEM: '/dev/null' },
  })
  if (run.status !== 0) throw new Error(`git ${args.join(' ')}: ${run.stderr}`)
  return run.stdout
}

/** Files in a repository of their own, all of them committed. */
export function repository(files: Readonly<Record<string, string>>): string {
  const cwd = scratch(files)
  git(cwd, 'init', '-q')
  git(cwd, 'add', '-A')
  git(cwd, 'commit', '-q', '-m', 'first')
  return cwd
}
