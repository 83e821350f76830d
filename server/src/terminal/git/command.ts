import { accessSync, constants, statSync } from 'node:fs'
import { delimiter, isAbsolute, join, resolve } from 'node:path'

type Env = Readonly<Record<string, string | undefined>>

/**
 * The full path of git, so that a program of that name in the current or the checked folder is never started: only
 * absolute entries of PATH count, and neither of these two folders.
 */
export function findGit(env: Env, ...never: readonly string[]): string | null {
  const names = process.platform === 'win32' ? ['git.exe'] : ['git']
  const forbidden = never.map((folder) => resolve(folder))
  const folders = (env.PATH ?? env.Path ?? '').split(delimiter)
  const paths = folders
    .filter((folder) => isAbsolute(folder) && !forbidden.includes(resolve(folder)))
    .flatMap((folder) => names.map((name) => join(folder, name)))
  return paths.find(isProgram) ?? null
}

/**
 * Settings that win over those of the repository, which a stranger may have written: nothing of theirs is run, nothing is
 * fetched, and a folder that only looks like a repository is none.
 */
export const careful: readonly string[] = [
  '--no-pager',
  '--no-optional-locks',
  '-c',
  'core.fsmonitor=false',
  '-c',
  'safe.bareRepository=explicit',
  '-c',
  'protocol.allow=never',
  '-c',
  'core.hooksPath=/dev/null',
]

/** None of git's own variables, which would point it to another repository; GIT_ALLOW_PROTOCOL wins over protocol.*.allow. */
export function carefulEnv(env: Env, indexFile?: string): Record<string, string | undefined> {
  const others = Object.entries(env).filter(([name]) => !/^GIT_/i.test(name))
  return {
    ...Object.fromEntries(others),
    LC_ALL: 'C', // its complaints are recognised
    GIT_ALLOW_PROTOCOL: 'none',
    GIT_NO_LAZY_FETCH: '1',
    GIT_NO_REPLACE_OBJECTS: '1',
    GIT_TERMINAL_PROMPT: '0',
    ...(indexFile !== undefined && { GIT_INDEX_FILE: indexFile }),
  }
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return statSync(path).isFile()
  } catch {
    return false
  }
}
