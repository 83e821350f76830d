import { cpSync, mkdirSync } from 'node:fs'
import { spawnSync } from 'node:child_process'
import { homedir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { git, scratch } from '../terminal/run.ts'

/** The sources as a clone holds them, committed: no node_modules, no dist. */
export function clone(): string {
  const folder = scratch()
  const listed = git(resolve('.'), 'ls-files', '-co', '--exclude-standard', '-z')
  const wanted = listed.split('\0').filter((path) => path && !path.startsWith('test/') && !path.startsWith('samples/'))
  for (const path of wanted) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    cpSync(path, join(folder, path))
  }
  git(folder, 'init', '-q')
  git(folder, 'add', '-A')
  git(folder, 'commit', '-q', '-m', 'sources')
  return folder
}

/** A program with npm and git as a person would have them: nothing of vitest's or of this machine's git. */
export function run(program: string, args: readonly string[], cwd: string, env: Record<string, string> = {}) {
  const kept = Object.entries(process.env).filter(([name]) => !/^(npm_|GIT_|NODE_ENV|VITEST|CI$)/i.test(name))
  const { status, stdout, stderr } = spawnSync(program, args, {
    cwd,
    encoding: 'utf8',
    // one cache for all, so that the packages are fetched once
    env: {
      ...Object.fromEntries(kept),
      GIT_CONFIG_GLOBAL: '/dev/null',
      npm_config_cache: join(homedir(), '.npm'),
      ...env,
    },
  })
  return { status, stdout, stderr }
}
