import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'

/** Everything is built beside its place and renamed last, so a half-done or a second, simultaneous call does no harm. */
export function layInto(place, isThere, build) {
  mkdirSync(join(place, '..'), { recursive: true })
  const scratch = mkdtempSync(join(place, '..', 'scratch-'))
  try {
    build(scratch)
    try {
      renameSync(scratch, place)
    } catch (error) {
      if (!isThere()) throw error // otherwise another call was quicker
    }
  } finally {
    rmSync(scratch, { recursive: true, force: true })
  }
}

/** One folder of a published package, checked against its pinned checksum. */
export function unpack({ name, version, folder, integrity }, target, scratch, leftOut = []) {
  say(`${name} ${version}`)
  const file = join(scratch, run('npm', ['pack', '--silent', '--ignore-scripts', `${name}@${version}`], scratch).trim())
  const sum = `sha512-${createHash('sha512').update(readFileSync(file)).digest('base64')}`
  if (sum !== integrity) throw new Error(`${name}@${version} is not the package that was pinned: ${sum}`)
  mkdirSync(target)
  const strip = `--strip-components=${folder.split('/').length}`
  run('tar', ['-xzf', file, '-C', target, strip, ...leftOut.map((glob) => `--exclude=${glob}`), folder], scratch)
  rmSync(file)
}

/** The dependencies of the package in a folder, as published: no install script runs. */
export const installDependencies = (folder, pathFirst) =>
  run(
    'npm',
    ['install', '--omit=dev', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'],
    folder,
    pathFirst,
  )

export function run(program, args, cwd, pathFirst) {
  const env = pathFirst ? { ...process.env, PATH: `${pathFirst}:${process.env.PATH}` } : process.env
  return execFileSync(program, args, {
    cwd,
    env,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
    maxBuffer: 1 << 26,
  })
}

export function say(what) {
  console.error(`workbench: ${what}`)
}
